package pitchboard.store.library;

import java.time.Instant;

/**
 * A job, as it stands in one of its versions.
 *
 * @param id 10 small letters or digits, made by chance
 * @param version the one that was asked for
 */
public record Job(String id, boolean archived, Version version) {
    /**
     * A job in the list.
     *
     * @param version the number of its newest
     * @param saved when its newest was saved
     */
    public record Line(String id, String name, String place, int version, Instant saved, boolean archived) {}
}
