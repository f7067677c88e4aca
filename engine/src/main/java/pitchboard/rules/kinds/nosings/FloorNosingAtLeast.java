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

/** The edge of the upper floor must reach at least this far in front of the riser below it, like every tread. */
public record FloorNosingAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    public FloorNosingAtLeast {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return "floor-nosing-at-least";
    }

    @Override
    public String subject() {
        return "nosing at the floor's edge";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public FloorNosingAtLeast withLimit(Quantity value) {
        return new FloorNosingAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public FloorNosingAtLeast withProvisos(List<Proviso> others) {
        return new FloorNosingAtLeast(clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        return FloorEdge.judge(
                stair,
                edge -> Waiver.find(provisos, stair)
                        .map(from -> Waiver.because(from, stair))
                        .orElseGet(() -> bound().judge(edge, Place.HEAD, () -> remedy(stair))));
    }

    private Phrase remedy(Stair stair) {
        Length overhang = OnTape.noLess(stair, FloorEdge.overhangFor(stair, least));
        return Phrase.of("let the decking reach {} past the face of the header", overhang);
    }
}
