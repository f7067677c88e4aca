/**
 * What one fastener in wood carries, after NDS 2018 chapters 11 and 12: yield modes, withdrawal, pulled-through heads, both
 * together, groups, spacing and wet service. Lengths in doubles are inches and stresses psi inside the formulas, as in the
 * book; outside they are unit types.
 * In: a fastener, the members it joins, how they are used. Out: {@link pitchboard.strength.fasteners.Capacity} with its mode
 * and every factor, or why none can be told.
 * Knows nothing about stairs.
 */
package pitchboard.strength.fasteners;
