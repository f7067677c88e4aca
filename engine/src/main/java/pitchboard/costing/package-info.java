/**
 * What a job costs and what it is offered for.
 * In: stairs, what is bought for them, and the crew's rates. Out: lines of cost with their working, and the price.
 * Knows no clock: the day of the quote is given. A price that is missing makes the whole incomplete, never zero.
 */
package pitchboard.costing;
