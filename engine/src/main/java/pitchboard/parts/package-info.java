/**
 * Every physical piece of the stair: how many, how big, what for, and where its marks lie.
 * In: a {@link pitchboard.stair.Stair}. Out: a parts list, the layout of a stringer on its board, the figures behind them.
 * Knows no prices, no boards to buy, no paper.
 */
package pitchboard.parts;
