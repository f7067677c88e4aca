/**
 * Drawings for a screen: the stair and its stringer for a page to react to, and small pictures of choices and of how to
 * measure. In: a {@link pitchboard.sheet.subject.Subject}, or nothing. Out: a {@link pitchboard.sheet.Picture}.
 * Computes no sizes, and knows neither colours nor the page that shows them.
 */
package pitchboard.sheet.pictures;
