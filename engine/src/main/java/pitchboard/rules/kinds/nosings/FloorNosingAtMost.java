package pitchboard.rules.kinds.nosings;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.FloorEdge;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The edge of the upper floor may reach no farther than this in front of the riser below it, like every tread. */
public record FloorNosingAtMost(Clause clause, Length most, List<Proviso> provisos) implements Bounded {
    public FloorNosingAtMost {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return "floor-nosing-at-most";
    }

    @Override
    public String subject() {
        return "nosing at the floor's edge";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public FloorNosingAtMost withLimit(Quantity value) {
        return new FloorNosingAtMost(clause, (Length) value, provisos);
    }

    @Override
    public FloorNosingAtMost withProvisos(List<Proviso> others) {
        return new FloorNosingAtMost(clause, most, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        return FloorEdge.judge(stair, edge -> edge(stair, edge));
    }

    private Verdict edge(Stair stair, Length edge) {
        if (!bound().admits(edge) && Waiver.find(provisos, stair).isPresent()) {
            return Verdict.cannotTell(
                    "ask whether a floor edge that reaches out {}, over {}, is accepted where no nosing is owed",
                    edge,
                    most);
        }
        return bound().judge(edge, Place.HEAD, () -> remedy(stair));
    }

    private Phrase remedy(Stair stair) {
        Length overhang = OnTape.noMore(stair, FloorEdge.overhangFor(stair, most));
        return Phrase.of("cut the decking back to {} past the face of the header", overhang);
    }
}
