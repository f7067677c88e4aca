package pitchboard.brief;

import pitchboard.measure.Length;

/** How the foot of each stringer stands and is kept from sliding. */
public sealed interface FootDetail {
    /** The level cut stands on the surface itself, held by brackets or anchors. */
    record OnSurface() implements FootDetail {}

    /** The level cut stands on a board that lies on the surface. */
    record SoleBoard(Length thickness, Length width) implements FootDetail {}

    /** A board fixed flat to the surface, let into the toe of every stringer. */
    record Kicker(Length height, Length depth) implements FootDetail {}
}
