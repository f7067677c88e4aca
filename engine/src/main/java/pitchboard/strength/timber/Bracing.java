package pitchboard.strength.timber;

import pitchboard.measure.Length;

/** What keeps the compression edge of a beam from moving sideways. */
public sealed interface Bracing {
    /**
     * It is held all along.
     *
     * @param because by what, as a whole reason
     */
    record Held(String because) implements Bracing {}

    /**
     * It is held only at points.
     *
     * @param apart the distance between them
     */
    record AtPoints(Length apart, Load load) implements Bracing {}

    /** What bends it between those points. */
    enum Load {
        SPREAD,
        /** One load in the middle, where nothing holds the beam. */
        MIDDLE
    }
}
