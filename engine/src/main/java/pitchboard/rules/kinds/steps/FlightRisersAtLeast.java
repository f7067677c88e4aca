package pitchboard.rules.kinds.steps;

import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/**
 * A flight must have at least so many risers.
 *
 * @param fewer what the book makes of fewer
 */
public record FlightRisersAtLeast(Clause clause, Count least, Fewer fewer) implements Bounded {
    /** What fewer risers are. */
    public enum Fewer {
        /** Not allowed: they are overlooked. */
        FORBIDDEN,
        /** No flight at all, so that the book does not say what holds for them. */
        NO_FLIGHT
    }

    @Override
    public String id() {
        return "flight-risers-at-least";
    }

    @Override
    public String subject() {
        return "risers in a flight";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public FlightRisersAtLeast withLimit(Quantity value) {
        return new FlightRisersAtLeast(clause, (Count) value, fewer);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        Count risers = new Count(stair.flight().risers());
        if (fewer == Fewer.NO_FLIGHT && !bound().admits(risers)) {
            return Verdict.cannotTell("ask what holds for so few risers: the book calls it a flight from {} on", least);
        }
        return bound().judge(
                        risers,
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("use {} risers, or put a ramp here: fewer are overlooked", least));
    }
}
