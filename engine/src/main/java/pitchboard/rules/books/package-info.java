/**
 * All rulebooks there are, found by name. The books themselves are in the packages below, by region.
 * In: nothing. Out: {@link pitchboard.rules.Rulebook}s. There is no default book: a job names the one that applies.
 */
package pitchboard.rules.books;
