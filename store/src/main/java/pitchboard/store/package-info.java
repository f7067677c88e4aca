/**
 * Where people's words are kept: job files and local changes.
 *
 * <p>In: paths. Out: text for the engine, or the problem met on the way. Must not know documents.
 */
package pitchboard.store;
