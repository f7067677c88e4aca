package pitchboard.web.jobs;

import java.time.Instant;

/**
 * One version of a job, as it is kept.
 *
 * @param version counted from 1
 * @param archived put away: listed only when asked for
 */
public record Kept(String id, int version, Instant saved, boolean archived, Draft draft) {}
