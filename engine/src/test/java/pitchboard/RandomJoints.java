package pitchboard;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.Fasteners;
import pitchboard.brief.FootPad;
import pitchboard.brief.Joints;
import pitchboard.brief.Support;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.measure.Tape;

/** Draws what holds a stair together, after everything else, so that a seed goes on meaning the same stair. */
final class RandomJoints {
    private final Draws draws;
    private final Tape tape;

    RandomJoints(Draws draws, Tape tape) {
        this.draws = draws;
        this.tape = tape;
    }

    Brief on(Brief brief) {
        Brief joined = draws.percent(30) ? brief : Rebuilt.with(brief, "joints", joints());
        return draws.percent(80) ? joined : Rebuilt.with(joined, "support", Optional.of(support()));
    }

    private Length size(int lowMm, int highMm) {
        return draws.onTape(tape, lowMm, highMm);
    }

    private Support support() {
        return new Support(size(300, 2500), size(60, 140), size(38, 140), draws.maybe(50, () -> size(310, 600)));
    }

    private Joints joints() {
        return new Joints(
                fasteners(),
                fasteners(),
                load(200, 900),
                draws.maybe(50, () -> size(38, 150)),
                fasteners(),
                fasteners(),
                fasteners(),
                load(500, 2500),
                load(100, 400),
                new FootPad(
                        draws.maybe(50, () -> new FootPad.Size(size(310, 2000), size(310, 2500), size(60, 300))),
                        draws.maybe(50, () -> draws.oneOf(List.of(FootPad.Soil.values())))));
    }

    private Optional<Reckoned> load(int least, int most) {
        return draws.maybe(
                50,
                () -> draws.percent(50)
                        ? new Reckoned(draws.between(least, most), Unit.POUND)
                        : new Reckoned(draws.between(least, most) / 200.0, Unit.KILONEWTON));
    }

    private Optional<Fasteners> fasteners() {
        return draws.maybe(70, () -> {
            int number = draws.between(1, 10);
            return switch (draws.between(0, 4)) {
                case 0 -> new Fasteners.Rated(load(100, 500).orElse(new Reckoned(150, Unit.POUND)), number);
                case 1 -> screw(number);
                case 2 -> sized(Fasteners.Kind.NAIL, Length.inches(0, 9, 64), number);
                case 3 -> sized(Fasteners.Kind.BOLT, Length.inches(0, 1, 2), number);
                default ->
                    sized(
                            Fasteners.Kind.LAG_SCREW,
                            draws.oneOf(List.of(
                                    Length.inches(0, 1, 4),
                                    Length.inches(0, 3, 8),
                                    Length.inches(0, 1, 2),
                                    Length.inches(0, 9, 16))),
                            number);
            };
        });
    }

    private Fasteners screw(int number) {
        return new Fasteners.Sized(
                Fasteners.Kind.WOOD_SCREW, Optional.empty(), Optional.of(draws.between(6, 14)), size(30, 140), number);
    }

    private Fasteners sized(Fasteners.Kind kind, Length diameter, int number) {
        return new Fasteners.Sized(kind, Optional.of(diameter), Optional.empty(), size(30, 200), number);
    }
}
