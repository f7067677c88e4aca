/**
 * One kind of stock to be cut into pieces, in whole numbers: the question, the plan that answers it, and the checker.
 * In: lengths in ticks (any unit, as long as it is one), prices in the smallest coin. Out: boards with their pieces.
 * Knows nothing about how a plan is found; {@link PlanChecker} shares no code with the search, on purpose.
 */
package pitchboard.buying.cutting;
