/**
 * What the joints of a stair must hold: a guard's post in its rim, the head on its header, the foot on its pad, the pad on
 * the ground.
 * In: sizes, reactions and what one fastener carries. Out: {@link pitchboard.strength.Utilisation}s with their working, and
 * {@link pitchboard.carry.joints.Caution}s where tests or practice say more than a formula.
 * Knows nothing about job files or drawings, and no products: a metal part is told by what it must hold.
 */
package pitchboard.carry.joints;
