package pitchboard.rules.kinds.grips;

import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.rails.Rails;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The edges of a handrail must be eased by at least this radius. */
public record RailEdgeRadiusAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "rail-edge-radius-at-least";
    }

    @Override
    public String subject() {
        return "radius of the handrail's edges";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RailEdgeRadiusAtLeast withLimit(Quantity value) {
        return new RailEdgeRadiusAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Grips.judge(
                stair, grip -> grip instanceof Handrail.Grip.Recessed recessed ? judge(recessed) : ask(stair));
    }

    private Verdict judge(Handrail.Grip.Recessed rail) {
        return bound().judge(
                        rail.edgeRadius(),
                        Rails.RAIL,
                        () -> Phrase.of("ease all edges of the handrail to a radius of {}", least));
    }

    private Verdict ask(Stair stair) {
        return Grips.judgeRectangle(
                stair,
                rail -> Verdict.cannotTell(
                        "see that all edges of the handrail are eased, to a radius of {} at least", least));
    }
}
