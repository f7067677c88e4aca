package pitchboard.rules.kinds.rails;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Rail and brackets may reach no farther than this into the width, on each side. */
public record HandrailProjectionAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "handrail-projection-at-most";
    }

    @Override
    public String subject() {
        return "reach of the handrail into the width";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public HandrailProjectionAtMost withLimit(Quantity value) {
        return new HandrailProjectionAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judge(
                stair,
                rail -> rail.projection()
                        .map(reach -> bound().judge(
                                        reach,
                                        Rails.RAIL,
                                        () -> Phrase.of(
                                                "bring the handrail closer to the side by {}",
                                                OnTape.noLess(stair, reach.minus(most)))))
                        .orElseGet(() -> Verdict.cannotTell(
                                Fact.RAIL_REACH, "decide how far rail and brackets reach into the width")));
    }
}
