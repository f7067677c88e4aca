/**
 * Writers of papers and files.
 *
 * <p>In: sheets and results. Out: bytes. They transcribe and compute nothing; they do not know where a job is kept.
 */
package pitchboard.documents;
