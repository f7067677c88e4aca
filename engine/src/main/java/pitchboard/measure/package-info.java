/**
 * Exact quantities of the trade: lengths, ratios, pitches, areas, angles, and the tape they are read from and marked to.
 * In: whole numbers, fractions, tape text. Out: values that never round in secret.
 * A length is a fraction of a unit that both tapes divide evenly, plus at most one square root (the slope of a
 * stringer); it leaves the exact world only through {@code approxMm}, for drawing and strength.
 * What is reckoned about strength is a near number that carries its unit and is never cut by.
 * Knows nothing about stairs.
 */
package pitchboard.measure;
