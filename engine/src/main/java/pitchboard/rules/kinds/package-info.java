/**
 * Kinds of rules, shared by all books: each says what is measured and how it is judged; limits and clauses come from
 * the books. Here stands what several kinds need; the kinds themselves are below, by what they look at.
 * In: a {@link pitchboard.stair.Stair}. Out: {@link pitchboard.rules.Verdict}s.
 * Must not know any document.
 */
package pitchboard.rules.kinds;
