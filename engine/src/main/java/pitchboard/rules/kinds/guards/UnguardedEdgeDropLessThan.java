package pitchboard.rules.kinds.guards;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Where the edge of the upper floor has no guard, what lies below it must be less deep than this. */
public record UnguardedEdgeDropLessThan(Clause clause, Length less) implements Bounded {
    @Override
    public String id() {
        return "unguarded-edge-drop-less-than";
    }

    @Override
    public String subject() {
        return "drop below the upper floor's edge without a guard";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnguardedEdgeDropLessThan withLimit(Quantity value) {
        return new UnguardedEdgeDropLessThan(clause, (Length) value);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Edges.judgeDrop(stair, bound());
    }
}
