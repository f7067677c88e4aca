package pitchboard.rules.kinds.guards;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A guard along the edge of the upper floor must be at least this high above the floor. */
public record EdgeGuardHeightAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "edge-guard-height-at-least";
    }

    @Override
    public String subject() {
        return "height of the guard along the upper floor's edge";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public EdgeGuardHeightAtLeast withLimit(Quantity value) {
        return new EdgeGuardHeightAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Edges.judge(stair, guard -> judge(stair, bound(), guard.height()));
    }

    /** Also for other limits of the same height. */
    static Verdict judge(Stair stair, Limit limit, Length height) {
        return limit.judge(
                height,
                Edges.EDGE_GUARD,
                () -> Phrase.of(
                        "raise the guard along the upper floor's edge by {}",
                        OnTape.noLess(stair, ((Length) limit.value()).minus(height))));
    }
}
