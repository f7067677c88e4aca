/**
 * Finds the cheapest plan and proves it.
 * In: a problem in whole numbers and an effort allowed. Out: a plan with what is known about it, or why there is none.
 * Patterns and their linear relaxation, found column by column, bound the cost; the search branches on the boards of each
 * length. Doubles only point the way: every bound and every verdict is worked out in whole numbers.
 */
package pitchboard.buying.search;
