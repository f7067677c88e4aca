/**
 * How the lines of a job file are read and written: one {@link pitchboard.intake.form.Form} for each kind of value, one
 * {@link pitchboard.intake.form.Key} for each line.
 * In: a written tree. Out: values, and every problem met on the way. A line that cannot be read is noted and stands in
 * with an example, so that all others are still looked at; what stands in never leaves this package's callers.
 * Knows lengths and words, but no stair: which keys there are is said by {@code measured} and {@code wanted}.
 */
package pitchboard.intake.form;
