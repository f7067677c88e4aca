/**
 * Jobs for tests: an ordinary one that a test changes in one point, and random ones made from a seed.
 * In: a change, or a seed. Out: a {@code Site} and a {@code Brief}. Expects nothing and checks nothing.
 */
package pitchboard;
