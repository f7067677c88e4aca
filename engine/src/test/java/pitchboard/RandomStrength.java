package pitchboard;

import java.util.List;
import pitchboard.brief.Strength;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.measure.Tape;
import pitchboard.strength.eurocode.En338;
import pitchboard.strength.timber.Supplement2018;

/** Draws what the strength is reckoned with. */
final class RandomStrength {
    private final Draws draws;

    RandomStrength(Draws draws) {
        this.draws = draws;
    }

    Strength strength(Tape.Units units) {
        if (draws.percent(30)) {
            return Strength.assumed(units);
        }
        boolean graded = draws.percent(50);
        return new Strength(
                graded ? Strength.Method.ALLOWABLE_STRESS : Strength.Method.EUROCODE_5,
                draws.maybe(70, () -> wood(graded)),
                draws.maybe(30, () -> wood(graded)),
                draws.maybe(30, () -> wood(graded)),
                draws.maybe(30, () -> wood(graded)),
                draws.maybe(50, () -> draws.oneOf(List.of(Strength.Service.values()))),
                draws.maybe(50, () -> draws.oneOf(List.of(Strength.Treatment.values()))),
                new Strength.Loads(
                        draws.maybe(30, () -> load(1, Unit.PSF, Unit.KILONEWTON_PER_M2)),
                        draws.maybe(30, () -> load(1, Unit.PSF, Unit.KILONEWTON_PER_M2)),
                        draws.maybe(30, () -> load(10, Unit.POUND, Unit.KILONEWTON))),
                draws.percent(30));
    }

    private Strength.Wood wood(boolean graded) {
        if (!graded) {
            return new Strength.Wood.Classed(draws.oneOf(En338.names()));
        }
        String species = draws.oneOf(Supplement2018.table().species());
        return new Strength.Wood.Graded(
                species, draws.oneOf(Supplement2018.table().grades(species)));
    }

    private Reckoned load(int least, Unit pounds, Unit newtons) {
        return draws.percent(50)
                ? new Reckoned(least * draws.between(5, 120), pounds)
                : new Reckoned(least * draws.between(2, 60) / 10.0, newtons);
    }
}
