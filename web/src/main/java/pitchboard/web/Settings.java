package pitchboard.web;

import java.nio.file.Path;
import java.time.Clock;

/**
 * How a server runs.
 *
 * @param port 0 for any that is free
 * @param data the folder in which everything is kept; it is made when it is missing
 * @param isShared whether paired devices on the network are let in
 * @param mostJobs no more are taken in
 * @param clock says when something is saved
 */
public record Settings(int port, Path data, boolean isShared, int mostJobs, Clock clock) {
    /** More than a crew builds in a lifetime. */
    private static final int MOST_JOBS = 10_000;

    /** For this computer alone. */
    public static Settings of(int port, Path data) {
        return new Settings(port, data, false, MOST_JOBS, Clock.systemDefaultZone());
    }

    /** The same, for paired devices on the network too. */
    public Settings shared() {
        return new Settings(port, data, true, mostJobs, clock);
    }

    Path library() {
        return data.resolve("jobs.db");
    }

    Path backups() {
        return data.resolve("backups");
    }
}
