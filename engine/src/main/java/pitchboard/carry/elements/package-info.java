/**
 * A second opinion on a cut stringer, beside the throat that stands for it and never in its place: at once by a compact
 * rule, and by finite elements of its whole outline when they are asked for.
 * In: a {@link pitchboard.stair.Stair}, its loads and its wood. Out: sag, stress, and how far they agree with the throat.
 */
package pitchboard.carry.elements;
