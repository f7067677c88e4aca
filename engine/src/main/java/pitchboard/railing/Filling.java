package pitchboard.railing;

import pitchboard.measure.Length;

/** What closes one bay, laid out. */
public sealed interface Filling {
    Bay bay();

    /** The widest opening it leaves. */
    Length opening();

    /**
     * Plumb balusters; the gap is the level clear distance between them.
     *
     * @param length of every baluster along its edge, with both ends cut to the slope
     */
    record Balusters(Bay bay, Spacing spacing, Length length) implements Filling {
        @Override
        public Length opening() {
            return spacing.gap();
        }
    }

    /**
     * Boards along the rails.
     *
     * @param spacing square to the slope, from the bottom rail up
     * @param length of every board along the slope, with both ends cut plumb
     */
    record Boards(Bay bay, Spacing spacing, Length length) implements Filling {
        @Override
        public Length opening() {
            return spacing.gap();
        }
    }

    /**
     * A sheet with two plumb edges.
     *
     * @param height of the plumb edges
     * @param length along the slope
     */
    record Panel(Bay bay, Length height, Length length) implements Filling {
        @Override
        public Length opening() {
            return Length.ZERO;
        }
    }
}
