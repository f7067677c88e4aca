/**
 * Drawing: views at a scale, outlines, dimensions, notes, hatching and the signs a drawing needs.
 * In: exact model points, and words for lengths. Out: a {@link pitchboard.sheet.drafting.Draft} full of settled marks.
 * A {@code Draft} is the only thing here that changes; a {@code Pencil} draws on it for one part.
 * Knows nothing about stairs, and nothing about file formats.
 */
package pitchboard.sheet.drafting;
