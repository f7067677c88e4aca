package pitchboard.buying.cutting;

/**
 * How good a plan is known to be. Every figure rests on whole-number arithmetic.
 *
 * @param atLeast no plan at all costs less than this, in the smallest coin
 * @param cheapest whether the plan costs exactly that
 * @param fewest whether, besides, no plan as cheap takes fewer boards out of the yard
 * @param longest whether, besides, these boards cannot be cut so that a longer piece is left of a bought one
 * @param effort steps of work the search took; the same problem always takes the same
 */
public record Proof(long atLeast, boolean cheapest, boolean fewest, boolean longest, long effort) {
    public Proof {
        if (fewest && !cheapest) {
            throw new IllegalArgumentException("fewest boards is proved only among the cheapest plans");
        }
    }
}
