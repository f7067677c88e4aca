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

/** A flight may have no more risers than this without a landing. */
public record FlightRisersAtMost(Clause clause, Count most) implements Bounded {

    @Override
    public String id() {
        return "flight-risers-at-most";
    }

    @Override
    public String subject() {
        return "risers in a flight";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public FlightRisersAtMost withLimit(Quantity value) {
        return new FlightRisersAtMost(clause, (Count) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        new Count(stair.flight().risers()),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("put a landing on the way, after at most {} risers", most));
    }
}
