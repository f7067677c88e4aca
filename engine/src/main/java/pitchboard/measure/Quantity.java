package pitchboard.measure;

/** Anything that can be measured, limited and shown with a unit. Every kind is immutable and exact. */
public sealed interface Quantity permits Length, Ratio, Pitch, Angle, Area, Count, Found {}
