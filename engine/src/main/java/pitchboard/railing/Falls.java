package pitchboard.railing;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/** How far it is down from the edge of every step to what lies beside the flight. */
public record Falls(Stair stair) {
    /**
     * The drop at one step.
     *
     * @param step its number, 1 at the foot; the number of risers stands for the landing's edge at the head
     */
    public record Drop(int step, Length height) {}

    /** At the deeper end of each tread: its nosing or its back, over ground that falls. Then the landing's edge. */
    public List<Drop> drops() {
        return IntStream.rangeClosed(1, stair.flight().risers())
                .mapToObj(step -> new Drop(step, below(step).plus(beside())))
                .toList();
    }

    private Length below(int step) {
        Length surface = stair.rise().times(step);
        if (step > stair.treads()) {
            return Ground.below(stair, Point.of(stair.headerFace(), surface));
        }
        Point nosing = stair.nosing(step);
        Point back = Point.of(stair.riserCut(step + 1), surface);
        return Length.max(Ground.below(stair, nosing), Ground.below(stair, back));
    }

    private Length beside() {
        return stair.site().fallBeside().orElse(Length.ZERO);
    }

    /** The first step whose drop is more than this; empty when none is. */
    public Optional<Drop> findFirstOver(Length most) {
        return drops().stream().filter(drop -> drop.height().isMoreThan(most)).findFirst();
    }
}
