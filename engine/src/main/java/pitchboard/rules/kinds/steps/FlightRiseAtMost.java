package pitchboard.rules.kinds.steps;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A flight may climb no more than this without a landing. */
public record FlightRiseAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "flight-rise-at-most";
    }

    @Override
    public String subject() {
        return "climb of the flight";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public FlightRiseAtMost withLimit(Quantity value) {
        return new FlightRiseAtMost(clause, (Length) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        stair.flight().totalRise(),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("put a landing on the way: one flight may climb {}", most));
    }
}
