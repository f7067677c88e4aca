/**
 * The library of jobs: one database file with every saved version of every job, and who may come in.
 *
 * <p>In: texts as they were written, and who saved them. Out: the same texts again, letter for letter, or what stands in
 * the way. Must not know what a text means beyond its name and place for the list, nor anything worked out from it.
 */
package pitchboard.store.library;
