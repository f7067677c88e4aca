/**
 * The whole job in reading order: read {@link pitchboard.job.Pipeline} first.
 * In: what people said, as a {@link pitchboard.job.Job}. Out: a designed stair with everything that follows from it, or
 * the reasons why none fits. Knows no files, no faces, and no particular rulebook.
 */
package pitchboard.job;
