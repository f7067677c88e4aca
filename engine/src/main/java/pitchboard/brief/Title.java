package pitchboard.brief;

/**
 * What the sheets carry at the top, all as given; a date is never read from a clock.
 *
 * @param job name of the job
 * @param client for whom; may be empty
 * @param place where; may be empty
 * @param date as it shall be printed; may be empty
 */
public record Title(String job, String client, String place, String date) {}
