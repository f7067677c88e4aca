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
import pitchboard.rules.kinds.OtherRisers;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** No step may be lower than this. */
public record RiseAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "rise-at-least";
    }

    @Override
    public String subject() {
        return "rise of a step";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RiseAtLeast withLimit(Quantity value) {
        return new RiseAtLeast(clause, (Length) value);
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
        return bound().judge(stair.rise(), Place.EVERY_STEP, () -> remedy(stair));
    }

    private Phrase remedy(Stair stair) {
        return OtherRisers.fewer(stair, other -> other.rise().isAtLeast(least))
                .orElseGet(() -> Phrase.of("put a ramp or a level threshold here: the climb is too small for a step"));
    }
}
