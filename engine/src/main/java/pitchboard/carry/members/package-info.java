/**
 * The members of a stair as load cases: what a stringer and a tread board carry, of what wood, by which standard, and each
 * check of them.
 * In: a stair, its rulebook's loads, what was said of its strength. Out: {@link pitchboard.strength.Utilisation}s.
 * Judges nothing: what a share of more than one means is for the package above to say.
 */
package pitchboard.carry.members;
