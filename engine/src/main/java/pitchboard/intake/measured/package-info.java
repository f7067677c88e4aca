/**
 * The lines under {@code measured:}, both ways: what was measured on site.
 * In: written lines. Out: a {@link pitchboard.site.Site}, and the same lines again.
 * Nothing here has a value that nobody measured: what is missing is asked for, or stays open for the rules to ask.
 */
package pitchboard.intake.measured;
