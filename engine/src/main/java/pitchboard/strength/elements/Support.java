package pitchboard.strength.elements;

import pitchboard.strength.elements.mesh.Xy;

/**
 * A straight piece of the outline that something holds.
 *
 * @param face whether the piece stays straight
 * @param held the directions in which it cannot move
 */
public record Support(Xy from, Xy to, Face face, Held held) {
    /** What the wood rests against. */
    public enum Face {
        /** The piece stays straight, may turn, and is held at its middle. */
        RIGID,
        /** Every point of the piece is held by itself, which also keeps it from turning. */
        EVERY_POINT
    }

    /** The directions in which nothing moves. */
    public enum Held {
        LEVEL,
        PLUMB,
        BOTH,
        /** Only kept straight. */
        NEITHER;

        boolean level() {
            return this == LEVEL || this == BOTH;
        }

        boolean plumb() {
            return this == PLUMB || this == BOTH;
        }
    }

    /** May turn, cannot move. */
    public static Support pin(Xy from, Xy to) {
        return new Support(from, to, Face.RIGID, Held.BOTH);
    }

    /** May turn and slide level, cannot move up or down. */
    public static Support roller(Xy from, Xy to) {
        return new Support(from, to, Face.RIGID, Held.PLUMB);
    }

    /** Bears over its whole length: cannot move up or down, nor turn; may slide level. */
    public static Support bearing(Xy from, Xy to) {
        return new Support(from, to, Face.EVERY_POINT, Held.PLUMB);
    }

    /** Cannot move or turn. */
    public static Support fixed(Xy from, Xy to) {
        return new Support(from, to, Face.EVERY_POINT, Held.BOTH);
    }

    Xy middle() {
        return from.toward(to, 0.5);
    }
}
