/**
 * What is wanted, and what stock and tools are at hand.
 * In: choices and wishes of crew and client. Out: the same, as typed values; nothing here is measured or derived.
 */
package pitchboard.brief;
