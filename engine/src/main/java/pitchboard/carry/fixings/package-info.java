/**
 * What the job says of its fasteners as capacities: which wood they are in, how deep, how they lie to the grain.
 * In: a {@link pitchboard.brief.Fasteners} and the {@link pitchboard.carry.fixings.Joint} it holds. Out:
 * {@link pitchboard.strength.Utilisation}s with every mode and factor, or how many of a common kind would do.
 * Judges nothing.
 */
package pitchboard.carry.fixings;
