/**
 * What to buy and how to cut it, all stocks together.
 * In: what is needed and what there is to be had. Out: boards with their cuts, read from one end, and what is still open.
 * The search for the cheapest plan is in {@code buying.search}; here its whole numbers become lengths and money again.
 */
package pitchboard.buying.order;
