package pitchboard.rules.kinds.guards;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Outdoors, or high above the ground outdoors, a guard along the edge of the upper floor must be at least this high. */
public record OutdoorEdgeGuardHeightAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    private static final String DROP = "outdoor-edge-drop";

    public OutdoorEdgeGuardHeightAtLeast {
        provisos = List.copyOf(provisos);
    }

    /** Only where the edge is more than this above what lies below it. */
    public static Proviso moreThan(Clause clause, Length drop) {
        return Proviso.of(
                DROP,
                "height of the upper floor outdoors from which its guard is higher",
                clause,
                Limit.moreThan(drop));
    }

    @Override
    public String id() {
        return "outdoor-edge-guard-height-at-least";
    }

    @Override
    public String subject() {
        return "height of the guard along the upper floor's edge outdoors";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public OutdoorEdgeGuardHeightAtLeast withLimit(Quantity value) {
        return new OutdoorEdgeGuardHeightAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public OutdoorEdgeGuardHeightAtLeast withProvisos(List<Proviso> others) {
        return new OutdoorEdgeGuardHeightAtLeast(clause, least, others);
    }

    @Override
    public List<Reading> restsOn() {
        return provisos.isEmpty() ? List.of() : List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (stair.site().setting() == Site.Setting.INDOORS) {
            return Verdict.doesNotApply("the stair is indoors");
        }
        return Edges.judge(
                stair,
                guard -> Proviso.find(provisos, DROP)
                        .filter(high -> !high.isMetBy(Edges.drop(stair)))
                        .flatMap(Proviso::limit)
                        .map(high -> Verdict.doesNotApply(
                                "the upper floor is no more than {} above what lies below", high.value()))
                        .orElseGet(() -> EdgeGuardHeightAtLeast.judge(stair, bound(), guard.height())));
    }
}
