/**
 * What came of a job, as JSON for other programs: every field is explained in docs/json.md.
 * In: an {@link pitchboard.job.Outcome}. Out: text, the same for the same outcome on every machine.
 * Pure, so that the browser writes the same.
 */
package pitchboard.documents.json;
