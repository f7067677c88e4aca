/**
 * What the sheets are drawn from, and the views of it that several sheets share. In: a
 * {@link pitchboard.sheet.subject.Subject}, everything that was settled about the stair. Computes no sizes.
 */
package pitchboard.sheet.subject;
