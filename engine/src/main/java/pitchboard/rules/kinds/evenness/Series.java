package pitchboard.rules.kinds.evenness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.rules.kinds.FloorEdge;
import pitchboard.stair.Stair;

/**
 * Rises or runs of one flight in the order one climbs them, and three ways to say how far from alike they are.
 *
 * @param sizes one at least
 */
public record Series(List<Length> sizes) {
    public Series {
        sizes = List.copyOf(sizes);
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("a flight has one step at least");
        }
    }

    /** As designed: every rise is the same exact part of the climb. */
    public static Series rises(Stair stair) {
        return new Series(Collections.nCopies(stair.flight().risers(), stair.rise()));
    }

    /** As designed: all runs alike, but for the top one where the floor is the last step. */
    static Series runs(Stair stair, Length projectionOfEdge) {
        List<Length> runs = new ArrayList<>(Collections.nCopies(stair.treads() - 1, stair.run()));
        runs.add(FloorEdge.topRun(stair, projectionOfEdge));
        return new Series(runs);
    }

    /** The largest less the smallest. */
    public Length spread() {
        Length least = sizes.stream().reduce(Length::min).orElseThrow();
        return sizes.stream().reduce(Length::max).orElseThrow().minus(least);
    }

    /** The greatest difference between neighbours; nothing when there is only one. */
    public Length change() {
        Length greatest = Length.ZERO;
        for (int i = 1; i < sizes.size(); i++) {
            greatest = Length.max(greatest, sizes.get(i).minus(sizes.get(i - 1)).abs());
        }
        return greatest;
    }

    /** The greatest difference from the size that was planned, up or down. */
    public Length deviation(Length planned) {
        return sizes.stream()
                .map(size -> size.minus(planned).abs())
                .reduce(Length::max)
                .orElseThrow();
    }

    public Length first() {
        return sizes.get(0);
    }
}
