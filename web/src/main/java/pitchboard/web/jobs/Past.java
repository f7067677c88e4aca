package pitchboard.web.jobs;

import java.time.Instant;

/**
 * A line in the list of a job's versions.
 *
 * @param device where it was saved
 * @param note how it came about, when not by typing; may be empty
 */
public record Past(int version, Instant saved, String device, String note) {}
