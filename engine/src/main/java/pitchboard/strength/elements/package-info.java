/**
 * Plane-stress finite elements for a board of timber cut to any outline, the grain along the board.
 * In: a {@link pitchboard.strength.elements.Plate} in mm and N. Out: deflection, reactions, stresses away from sharp
 * corners, all with their convergence.
 * Knows nothing about stairs. Enter by {@link pitchboard.strength.elements.Elements}.
 *
 * <p>The element is the six-node triangle: any outline can be meshed with triangles that shrink toward the corners cut
 * into the wood, where the stress has no limit and equal elements converge slowly; and with straight sides its stiffness
 * is integrated exactly by three points.
 */
package pitchboard.strength.elements;
