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

/** A flight without any handrail must climb less than this. */
public record UnrailedRiseLessThan(Clause clause, Length less) implements Bounded {

    @Override
    public String id() {
        return "unrailed-rise-less-than";
    }

    @Override
    public String subject() {
        return "climb without a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnrailedRiseLessThan withLimit(Quantity value) {
        return new UnrailedRiseLessThan(clause, (Length) value);
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
