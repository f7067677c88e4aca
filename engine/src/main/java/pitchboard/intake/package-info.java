/**
 * The job file as text, read and written: the page on the phone and the command line read the same words.
 * In: a written tree, or JSON. Out: {@link pitchboard.intake.JobText}, a whole job or everything that is wrong with it;
 * {@link pitchboard.intake.ChangesText}, the local changes to a rulebook; and a job as text again.
 * Says nothing of whether a stair can be built or is allowed. Knows no file: {@code store} brings the text.
 */
package pitchboard.intake;
