package pitchboard.stair;

import java.util.List;

/**
 * A stair that was tried, good or bad.
 *
 * @param allowed whether the rulebook has nothing against its risers and run
 * @param fits whether space and wood have nothing against it
 */
public record Considered(Stair stair, boolean allowed, boolean fits) {
    /** Whether it meets at least one of the step formulas. */
    public boolean isComfortable() {
        return List.of(StepFormula.values()).stream().anyMatch(formula -> formula.suits(stair));
    }
}
