package pitchboard.site;

/** What the foot stands on. */
public enum FootSurface {
    CONCRETE_PAD,
    TIMBER_FLOOR,
    COMPACTED_GROUND
}
