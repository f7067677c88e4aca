package pitchboard.web.jobs;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Where jobs are kept. Every answer that says something is kept means that it is on the disk. */
public interface Jobs {
    /**
     * The jobs whose name or place holds these words, the last saved first.
     *
     * @param archived whether those put away are wanted, instead of the others
     */
    List<Listed> list(String search, boolean archived) throws NotKept;

    /** How many there are, put away or not. */
    int count() throws NotKept;

    /** Takes in a job. */
    Kept create(Draft draft, String device, String note) throws NotKept;

    /** Takes in a job and the very text it was read from, to be given back until the job is changed. */
    Kept createFrom(String text, Draft draft, String device, String note) throws NotKept;

    Optional<Kept> find(String id) throws NotKept;

    Optional<Kept> find(String id, int version) throws NotKept;

    /** The text that this version was taken in from, when it was. */
    Optional<String> findText(String id, int version) throws NotKept;

    /**
     * Keeps a new version; empty when there is no such job, or no such version to begin from.
     *
     * @param base the version that it began from
     */
    Optional<Saving> save(String id, int base, Draft draft, String device, String note) throws NotKept;

    /** Puts a job away or brings it back; false when there is none. */
    boolean archive(String id, boolean archived) throws NotKept;

    /** Newest first; none when there is no such job. */
    List<Past> versions(String id) throws NotKept;

    Set<String> ticks(String id) throws NotKept;

    /** False when there is no such job. */
    boolean tick(String id, String tick, boolean done) throws NotKept;

    /** Makes a copy of everything, while others go on. */
    Copied backup() throws NotKept;

    /**
     * A copy of everything.
     *
     * @param file its name in the folder of backups
     */
    record Copied(String file, long bytes) {}
}
