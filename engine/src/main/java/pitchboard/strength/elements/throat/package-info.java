/**
 * A notched board taken for a plain beam: of the depth that is left under the notches, as is usual, or a little deeper, which
 * is the instant answer while the finite elements run; and what the finite elements say beside either.
 * In: sizes in mm, loads in N. Out: deflection, stress, and the beam that would do the same.
 */
package pitchboard.strength.elements.throat;
