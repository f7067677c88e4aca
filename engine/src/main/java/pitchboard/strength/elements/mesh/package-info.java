/**
 * Triangles over a cut board seen from the side, small where the wood is cut into a corner and large elsewhere.
 * In: corners of an outline in millimetres and how fine to be. Out: a {@link Mesh} of six-node triangles.
 * Knows nothing of wood, loads or stairs. Places are doubles here: nothing is cut to them.
 */
package pitchboard.strength.elements.mesh;
