package pitchboard.buying.cutting;

import java.util.List;

/** What came of the search for a plan. */
public sealed interface PlanOutcome {
    record Planned(CutPlan plan) implements PlanOutcome {}

    /** These demands, counted from 0, are longer than every board. */
    record TooLong(List<Integer> demands) implements PlanOutcome {
        public TooLong {
            demands = List.copyOf(demands);
        }
    }

    /** The boards on hand cannot yield all the pieces, however they are cut. */
    record NotEnough() implements PlanOutcome {}

    /** No plan was found within the effort allowed, and no proof that there is none. */
    record GaveUp(long effort) implements PlanOutcome {}
}
