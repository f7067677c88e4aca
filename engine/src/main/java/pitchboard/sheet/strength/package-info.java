/**
 * The strength of the stair on paper: how much of what it may each member is used, the load on one stringer, every check
 * with its factors, what would make it carry, and whose word goes before it.
 * In: what {@link pitchboard.carry.Carried} says, and the stair. Out: drafts for the set. Reckons nothing.
 */
package pitchboard.sheet.strength;
