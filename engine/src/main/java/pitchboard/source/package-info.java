/**
 * What can be cited, and numbers that show their working.
 * In: titles, editions, clauses; symbols, expressions and values. Out: {@link Figure}s that a worksheet can print.
 * Knows nothing about stairs, and judges nothing.
 */
package pitchboard.source;
