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

/** No step may be higher than this. */
public record RiseAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "rise-at-most";
    }

    @Override
    public String subject() {
        return "rise of a step";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RiseAtMost withLimit(Quantity value) {
        return new RiseAtMost(clause, (Length) value);
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
        return OtherRisers.more(stair, other -> other.rise().isAtMost(most))
                .orElseGet(() -> Phrase.of("lower the upper surface: no number of risers helps"));
    }
}
