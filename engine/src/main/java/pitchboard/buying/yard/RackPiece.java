package pitchboard.buying.yard;

import pitchboard.measure.Length;

/**
 * Pieces left from other jobs.
 *
 * @param stock the name of the stock it is of
 * @param length as it measures, splits and stamps already left out
 * @param badEnd how much of one end is split or stamped, and in the length; zero when nothing is
 * @param count how many alike
 * @param note a pencilled name for it; may be empty
 */
public record RackPiece(String stock, Length length, Length badEnd, int count, String note) {}
