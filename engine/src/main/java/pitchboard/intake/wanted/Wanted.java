package pitchboard.intake.wanted;

import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Joints;
import pitchboard.brief.Nosing;
import pitchboard.brief.Paper;
import pitchboard.brief.Risers;
import pitchboard.brief.Strength;
import pitchboard.brief.Stringers;
import pitchboard.brief.Support;
import pitchboard.brief.Title;
import pitchboard.brief.TreadMakeUp;
import pitchboard.brief.Wishes;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** What stands under {@code wanted:}: a brief without the lines at the top of the file. */
public record Wanted(
        HeadJoin headJoin,
        HeadFixing headFixing,
        FootDetail foot,
        Length width,
        Optional<Length> clearWidth,
        TreadMakeUp treads,
        Risers risers,
        Optional<Nosing> nosing,
        Stringers stringers,
        Handrail handrail,
        Guard guard,
        Wishes wishes,
        Brief.Use use,
        Optional<Support> support,
        Joints joints,
        Strength strength) {
    public static Wanted of(Brief brief) {
        return new Wanted(
                brief.headJoin(),
                brief.headFixing(),
                brief.foot(),
                brief.width(),
                brief.clearWidth(),
                brief.treads(),
                brief.risers(),
                brief.nosing(),
                brief.stringers(),
                brief.handrail(),
                brief.guard(),
                brief.wishes(),
                brief.use(),
                brief.support(),
                brief.joints(),
                brief.strength());
    }

    public Brief brief(Title title, Tape tape, Paper paper) {
        return new Brief(
                title,
                headJoin,
                headFixing,
                foot,
                width,
                clearWidth,
                treads,
                risers,
                nosing,
                stringers,
                handrail,
                guard,
                wishes,
                use,
                support,
                joints,
                strength,
                tape,
                paper);
    }
}
