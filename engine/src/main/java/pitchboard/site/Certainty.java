package pitchboard.site;

/** How a measurement was come by. Anything but {@link #MEASURED} must be measured before the first cut. */
public enum Certainty {
    MEASURED,
    FROM_DRAWING,
    ESTIMATED
}
