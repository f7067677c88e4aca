/**
 * What came of a job, as plain text for a terminal.
 * In: an {@link pitchboard.job.Outcome}. Out: lines of at most about a hundred characters.
 */
package pitchboard.documents.text;
