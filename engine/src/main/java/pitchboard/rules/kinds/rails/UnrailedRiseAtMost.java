package pitchboard.rules.kinds.rails;

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

/** A flight without any handrail may climb no more than this. */
public record UnrailedRiseAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "unrailed-rise-at-most";
    }

    @Override
    public String subject() {
        return "climb without a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public UnrailedRiseAtMost withLimit(Quantity value) {
        return new UnrailedRiseAtMost(clause, (Length) value);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        Rails.unrailedClimb(stair),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("fit a handrail on one side at least"));
    }
}
