package pitchboard.buying.order;

import pitchboard.buying.need.Need;
import pitchboard.measure.Length;

/**
 * One piece on its board.
 *
 * @param pieces 1, or 2 for two stringers that lie in one board, the second turned end for end
 * @param from where it begins, read from the end of the board where cutting starts
 * @param to where it ends; the saw goes on the far side of this line
 */
public record Cut(Need need, int pieces, Length from, Length to) {}
