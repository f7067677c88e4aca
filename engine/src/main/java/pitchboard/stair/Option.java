package pitchboard.stair;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;

/**
 * One possible stair and what speaks for and against it.
 *
 * @param objections empty when the rulebook and the space allow it
 */
public record Option(Stair stair, List<Objection> objections) {
    public Option {
        objections = List.copyOf(objections);
    }

    public boolean isAllowed() {
        return objections.isEmpty();
    }

    /** The step formulas whose band it meets. */
    public List<StepFormula> comforts() {
        return List.of(StepFormula.values()).stream()
                .filter(formula -> formula.suits(stair))
                .toList();
    }

    /** Level space that stays free in front of the first nosing; empty when nobody limited the space. */
    public Optional<Length> spaceLeft() {
        return stair.site().runAvailable().map(available -> available.value().minus(stair.spaceTaken()));
    }

    /** How far the worst objection is over its limit, as a part of the limit; 0 when allowed. */
    double worstMiss() {
        return objections.stream().mapToDouble(Objection::miss).max().orElse(0);
    }
}
