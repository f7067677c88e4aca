/**
 * The use cases shared by every face of Pitchboard.
 *
 * <p>In: a request from a face. Out: results to show and papers to keep. Must not know which face asked.
 */
package pitchboard.app;
