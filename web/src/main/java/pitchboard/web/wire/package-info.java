/**
 * How requests and answers are written: JSON in, JSON out, and what a refusal says.
 * In: a request's body. Out: its lines, or a refusal that says what would be right. Knows no jobs.
 */
package pitchboard.web.wire;
