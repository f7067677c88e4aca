package pitchboard.rules.kinds.nosings;

import pitchboard.brief.Risers;
import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The risers must be closed. */
public record ClosedRisers(Clause clause) implements Rule {
    @Override
    public String id() {
        return "closed-risers";
    }

    @Override
    public String subject() {
        return "open risers";
    }

    @Override
    public Verdict judge(Stair stair) {
        boolean open = stair.brief().risers() instanceof Risers.Open;
        return Limit.atMost(new Count(0))
                .judge(
                        new Count(open ? stair.flight().risers() : 0),
                        Place.EVERY_STEP,
                        () -> Phrase.of("close the risers with boards"));
    }
}
