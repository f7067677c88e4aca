package pitchboard;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Guard;
import pitchboard.brief.Handrail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Joints;
import pitchboard.brief.Nosing;
import pitchboard.brief.Paper;
import pitchboard.brief.Risers;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.brief.Title;
import pitchboard.brief.TreadMakeUp;
import pitchboard.brief.Wishes;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** Draws what is wanted. */
final class RandomBrief {
    private static final List<HeadJoin> JOINS = List.of(HeadJoin.values());
    private static final List<Graduation> GRADUATIONS = List.of(Graduation.values());

    private final Draws draws;
    private final RandomStrength strength;
    private final Tape tape;

    RandomBrief(Draws draws, RandomStrength strength) {
        this.draws = draws;
        this.strength = strength;
        Graduation graduation = draws.oneOf(GRADUATIONS);
        this.tape = new Tape(graduation.isOfTheInch() ? Tape.Units.INCHES : Tape.Units.MILLIMETRES, graduation);
    }

    Brief brief() {
        Length width = size(600, 1500);
        return new Brief(
                new Title("random job", "", "", ""),
                draws.oneOf(JOINS),
                headFixing(),
                foot(),
                width,
                draws.maybe(30, () -> width.minus(size(0, 100))),
                treads(),
                draws.percent(50) ? new Risers.Open() : new Risers.Boards(size(6, 25)),
                draws.maybe(60, this::nosing),
                new Stringers(stock(), draws.between(2, 5), size(0, 100), size(0, 120)),
                handrail(),
                new Guard(
                        draws.percent(50),
                        maybe(850, 1100),
                        maybe(80, 120),
                        maybe(120, 170),
                        Optional.empty(),
                        draws.maybe(30, () -> new EdgeGuard(size(850, 1100), Optional.empty(), Optional.empty()))),
                wishes(),
                draws.oneOf(List.of(Brief.Use.values())),
                Optional.empty(),
                Joints.UNSAID,
                strength.strength(tape.units()),
                tape,
                draws.oneOf(List.of(Paper.values())));
    }

    private Length size(int lowMm, int highMm) {
        return draws.onTape(tape, lowMm, highMm);
    }

    private Optional<Length> maybe(int lowMm, int highMm) {
        return draws.maybe(50, () -> size(lowMm, highMm));
    }

    private HeadFixing headFixing() {
        return switch (draws.between(0, 3)) {
            case 0 -> new HeadFixing.HangerBoard(size(15, 50), size(60, 400));
            case 1 -> new HeadFixing.Ledger(size(25, 60), size(30, 120));
            case 2 -> new HeadFixing.MetalHanger();
            default -> new HeadFixing.Bolts();
        };
    }

    private FootDetail foot() {
        return switch (draws.between(0, 2)) {
            case 0 -> new FootDetail.SoleBoard(size(15, 60), size(90, 240));
            case 1 -> new FootDetail.Kicker(size(15, 70), size(40, 150));
            default -> new FootDetail.OnSurface();
        };
    }

    private TreadMakeUp treads() {
        int boards = draws.between(1, 3);
        Length whole = size(240, 380);
        Length gap = boards == 1 ? Length.ZERO : size(3, 10);
        Length board = whole.minus(gap.times(boards - 1L)).dividedBy(boards).roundedUp(tape.graduation());
        return new TreadMakeUp(boards, board, gap, size(18, 60));
    }

    private Nosing nosing() {
        return switch (draws.between(0, 2)) {
            case 0 -> new Nosing.Rounded(size(1, 20));
            case 1 -> new Nosing.Bevelled(size(1, 20));
            default -> new Nosing.Square();
        };
    }

    private StringerStock stock() {
        Length depth = tape.isInches()
                ? draws.oneOf(List.of(Length.inches(9, 1, 4), Length.inches(11, 1, 4), Length.inches(13, 1, 4)))
                : draws.oneOf(List.of(Length.mm(235), Length.mm(285), Length.mm(300)));
        return new StringerStock("stock", draws.percent(80) ? depth : size(140, 340), size(30, 60));
    }

    private Handrail handrail() {
        return new Handrail(
                draws.oneOf(List.of(Handrail.Sides.values())),
                maybe(800, 1000),
                draws.maybe(
                        60,
                        () -> draws.percent(50)
                                ? new Handrail.Grip.Round(size(30, 60))
                                : new Handrail.Grip.Rectangle(size(30, 150), size(30, 100))),
                maybe(50, 130),
                maybe(30, 70),
                draws.maybe(50, () -> draws.percent(50)),
                maybe(400, 1500),
                Handrail.Past.NONE);
    }

    private Wishes wishes() {
        if (draws.percent(40)) {
            return Wishes.NONE;
        }
        return new Wishes(
                draws.maybe(30, () -> draws.between(1, 22)),
                draws.maybe(30, () -> size(200, 320)),
                draws.maybe(30, () -> size(140, 210)),
                draws.maybe(30, () -> size(230, 320)));
    }
}
