package pitchboard.web.jobs;

import java.time.Instant;

/**
 * A line in the list of jobs.
 *
 * @param name what the job calls itself; may be empty
 * @param version the newest
 * @param saved when that one was
 */
public record Listed(String id, String name, String place, int version, Instant saved, boolean archived) {}
