/**
 * What a job took against what was planned.
 * In: a job costed, and the hours and costs that were noted while it was built. Out: differences by task and by kind of
 * cost, what is left of the price, and the planning figures that would have been right. What nobody noted is never
 * taken for nothing.
 */
package pitchboard.afterwards;
