package pitchboard.brief;

import pitchboard.measure.Length;

/** How the head of each stringer is held to the header. */
public sealed interface HeadFixing {
    /** A board fixed flat to the header's face and let into the back of every stringer's head. */
    record HangerBoard(Length thickness, Length height) implements HeadFixing {}

    /** A ledger fixed to the header's face; each stringer is notched to sit on it. */
    record Ledger(Length thickness, Length height) implements HeadFixing {}

    /** A metal hanger at each stringer; the plumb cut stays whole. */
    record MetalHanger() implements HeadFixing {}

    /** Bolted or screwed through the header or through blocking; the plumb cut stays whole. */
    record Bolts() implements HeadFixing {}
}
