/**
 * What any member is reckoned with: stresses, forces, moments and loads as types; sections; statics of a simple beam;
 * demand over capacity with every factor and its reason. Doubles live here, inside unit types only.
 * In: lengths, loads, published values. Out: {@link pitchboard.strength.Utilisation}s that show their working.
 * Knows nothing about stairs; what a document says of timber lies in the packages below.
 */
package pitchboard.strength;
