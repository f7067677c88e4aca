/**
 * The lines of a file of options, several ways of doing one job, and what each changes in the job's own lines.
 * In: text in its shape. Out: {@code Offered}, or everything that is wrong with the text. Opens no job.
 */
package pitchboard.intake.offers;
