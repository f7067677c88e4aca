package pitchboard.web;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import pitchboard.web.guarding.Allowance;

/**
 * How a server runs.
 *
 * @param port 0 for any that is free
 * @param data the folder in which everything is kept; it is made when it is missing
 * @param isShared whether paired devices on the network are let in
 * @param limits how much is taken
 * @param clock says when something is saved
 */
public record Settings(int port, Path data, boolean isShared, Limits limits, Clock clock) {
    /**
     * How much is taken.
     *
     * @param jobs no more are kept
     * @param here requests in one second from a browser on this machine; twice as many at once
     * @param network the same from each device on the network, where a page of many files begins with a burst
     */
    public record Limits(int jobs, int here, int network) {
        /** More jobs than a crew builds in a lifetime, and more requests than any page sends. */
        static final Limits USUAL = new Limits(10_000, 5_000, 100);
    }

    /** For this computer alone. */
    public static Settings of(int port, Path data) {
        return new Settings(port, data, false, Limits.USUAL, Clock.system(ZoneId.systemDefault()));
    }

    /** The same, for paired devices on the network too. */
    public Settings shared() {
        return new Settings(port, data, true, limits, clock);
    }

    Path library() {
        return data.resolve("jobs.db");
    }

    Path prices() {
        return data.resolve("prices");
    }

    Path backups() {
        return data.resolve("backups");
    }

    Allowance here() {
        return allowance(limits.here());
    }

    Allowance network() {
        return allowance(limits.network());
    }

    private static Allowance allowance(int perSecond) {
        return new Allowance(2 * perSecond, perSecond, System::nanoTime);
    }
}
