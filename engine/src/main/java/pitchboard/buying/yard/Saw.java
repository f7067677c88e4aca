package pitchboard.buying.yard;

import pitchboard.measure.Length;

/**
 * What sawing takes.
 *
 * @param kerf the wood one cut turns to dust
 * @param endTrim lost at each end of a yard's board, to square it and to be rid of splits and stamps, its cut included;
 *     pieces of the rack are not trimmed
 * @param keepFrom a piece left over is kept when it is at least as long as this
 */
public record Saw(Length kerf, Length endTrim, Length keepFrom) {}
