/**
 * The strength of the stair on paper: how much of what it may each member is used, the load on one stringer, every check
 * with its factors, what would make it carry, and whose word goes before it; and the stress in a stringer by finite elements,
 * which are asked for only when their sheet is wanted.
 * In: what {@link pitchboard.carry.Carried} says, and the stair. Out: drafts for the set. Reckons nothing.
 */
package pitchboard.sheet.strength;
