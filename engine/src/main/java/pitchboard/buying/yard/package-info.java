/**
 * What boards there are to be had: the yard's price list and the crew's own rack.
 * In: what the price list says. Out: boards by their size, with prices. Knows no job.
 */
package pitchboard.buying.yard;
