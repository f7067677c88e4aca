package pitchboard.measure;

/**
 * Anything that can be measured, limited and shown with a unit. Every kind is immutable, and all but {@link Reckoned}
 * are exact.
 */
public sealed interface Quantity permits Length, Ratio, Pitch, Angle, Area, Count, Found, Reckoned {}
