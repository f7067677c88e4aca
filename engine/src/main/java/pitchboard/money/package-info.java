/**
 * Money, exact to the coin, and days of the calendar.
 * In: what a price list says. Out: sums of it. Knows no price and no clock: the day is given, never read.
 */
package pitchboard.money;
