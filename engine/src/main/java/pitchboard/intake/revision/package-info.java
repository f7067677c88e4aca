/**
 * Versions of one text with a shape, held against each other: what changed between two, and two people's changes to the
 * same one brought together.
 * In: {@link pitchboard.intake.written.Written} trees. Out: {@link pitchboard.intake.revision.Differences} and
 * {@link pitchboard.intake.revision.Merge}. Lines of a group have no order here, items of a list have.
 * Knows nothing of lengths, keys or what a line means: a job that is not complete yet has versions, too.
 */
package pitchboard.intake.revision;
