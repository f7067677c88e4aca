package pitchboard.sheet.lessons;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Joints;
import pitchboard.brief.Paper;
import pitchboard.brief.Risers;
import pitchboard.brief.Strength;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.brief.Title;
import pitchboard.brief.TreadMakeUp;
import pitchboard.brief.Wishes;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.site.FootSurface;
import pitchboard.site.HeadSupport;
import pitchboard.site.Landing;
import pitchboard.site.Measured;
import pitchboard.site.Rise;
import pitchboard.site.Side;
import pitchboard.site.Sights;
import pitchboard.site.Site;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;

/** A short flight of ordinary steps to show a choice on. */
record Sample(HeadJoin join, HeadFixing fixing, FootDetail foot, Risers risers, FootSurface surface) {
    static final Length RISE = Length.inches(7, 1, 2);
    static final Length RUN = Length.inches(10, 1, 4);

    private static final int COUNT = 8;

    static final Sample PLAIN = new Sample(
            HeadJoin.ONE_DOWN,
            new HeadFixing.Bolts(),
            new FootDetail.OnSurface(),
            new Risers.Open(),
            FootSurface.CONCRETE_PAD);

    Sample with(HeadJoin other) {
        return new Sample(other, fixing, foot, risers, surface);
    }

    Sample with(HeadFixing other) {
        return new Sample(join, other, foot, risers, surface);
    }

    Sample with(FootDetail other) {
        return new Sample(join, fixing, other, risers, surface);
    }

    Sample with(Risers other) {
        return new Sample(join, fixing, foot, other, surface);
    }

    Sample with(FootSurface other) {
        return new Sample(join, fixing, foot, risers, other);
    }

    Stair stair() {
        return new Stair(site(), brief(), new Flight(join, COUNT, RISE.times(COUNT), RUN));
    }

    private Site site() {
        Length decking = Length.inches(1);
        return new Site(
                new Rise.AtLanding(Measured.sure(RISE.times(COUNT))),
                Length.ZERO,
                Length.ZERO,
                Optional.empty(),
                List.of(),
                true,
                new HeadSupport("header", Length.inches(11, 1, 4), decking, Optional.of(Length.ZERO)),
                surface,
                Side.OPEN,
                Side.OPEN,
                Site.Setting.OUTDOORS,
                Landing.UNMEASURED,
                Landing.UNMEASURED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Sights.NONE);
    }

    private Brief brief() {
        return new Brief(
                new Title("", "", "", ""),
                join,
                fixing,
                foot,
                Length.inches(36),
                Optional.empty(),
                new TreadMakeUp(2, Length.inches(5, 1, 2), Length.inches(0, 1, 4), Length.inches(1)),
                risers,
                Optional.empty(),
                new Stringers(
                        new StringerStock("", Length.inches(11, 1, 4), Length.inches(1, 1, 2)),
                        3,
                        Length.inches(1),
                        Length.inches(1)),
                new Handrail(
                        Handrail.Sides.NONE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Handrail.Past.NONE),
                new Guard(
                        false,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                Wishes.NONE,
                Brief.Use.DWELLING,
                Optional.empty(),
                Joints.UNSAID,
                Strength.assumed(Tape.Units.INCHES),
                Tape.SIXTEENTHS,
                Paper.LETTER);
    }
}
