package pitchboard.store.library;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.store.FileTrouble;

/**
 * All jobs of a crew in one database file, every saved version kept. For many threads, and for several programs on one
 * file. What was said to be saved is on the disk and survives a crash.
 *
 * <p>Every operation throws {@link FileTrouble} when the file cannot be read or written; then nothing was changed.
 */
public final class JobLibrary implements AutoCloseable {
    /** Milliseconds to wait for another program that writes: no single saving takes nearly as long. */
    private static final int PATIENCE = 5_000;

    private final Database database;
    private final Clock clock;

    private JobLibrary(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * Opens the library in this file, makes it when it is missing, and brings one of an older version up to date.
     *
     * @param clock says when something is saved
     * @throws FileTrouble also when the file is something else or of a newer version; then it is left as it is
     */
    public static JobLibrary open(Path file, Clock clock) throws FileTrouble {
        return open(file, clock, Schema.RELEASED, PATIENCE);
    }

    static JobLibrary open(Path file, Clock clock, Schema schema, int patience) throws FileTrouble {
        return new JobLibrary(Database.open(file, schema, patience), clock);
    }

    /** The one saved last comes first. */
    public List<Job.Line> list(Search search) throws FileTrouble {
        return database.read(session -> new Jobs(session, clock).list(search));
    }

    /** How many jobs there are, archived ones too. */
    public int count() throws FileTrouble {
        return database.read(session -> session.number("select count(*) from job"));
    }

    /** A new job; the draft is its version 1. */
    public Job create(Draft draft, By by) throws FileTrouble {
        return database.write(session -> new Jobs(session, clock).create(draft, by));
    }

    public Optional<Job> findNewest(String id) throws FileTrouble {
        return database.read(session -> new Jobs(session, clock).findNewest(id));
    }

    public Optional<Job> findVersion(String id, int number) throws FileTrouble {
        return database.read(session -> new Jobs(session, clock).findVersion(id, number));
    }

    /** Newest first; none when there is no such job. */
    public List<Version.Line> versions(String id) throws FileTrouble {
        return database.read(session -> new Jobs(session, clock).versions(id));
    }

    /**
     * Saves a new version, unless the newest says the same already or is not the one that the draft began from.
     *
     * @param base the number of the version that the draft began from
     */
    public Saving save(String id, int base, Draft draft, By by) throws FileTrouble {
        return database.write(session -> new Jobs(session, clock).save(id, base, draft, by));
    }

    /** Saves an old version once more as the newest; never a conflict, because all that is between them stays. */
    public Saving restore(String id, int number, By by) throws FileTrouble {
        return database.write(session -> new Jobs(session, clock).restore(id, number, by));
    }

    /** A new job that begins as the newest version of this one, without its check-offs; empty when there is no such job. */
    public Optional<Job> copy(String id, By by) throws FileTrouble {
        return database.write(session -> new Jobs(session, clock).copy(id, by));
    }

    /**
     * Puts a job on the other shelf; nothing when it lies there already.
     *
     * @return false when there is no such job
     */
    public boolean put(String id, Search.Shelf shelf) throws FileTrouble {
        return database.write(session -> new Jobs(session, clock).put(id, shelf));
    }

    public Ticks ticks() {
        return new Ticks(database, clock);
    }

    public Devices devices() {
        return new Devices(database, clock);
    }

    /**
     * Writes a copy of the library as it is now into a new file; saving goes on meanwhile. The copy is a library like this
     * one, made whole or not at all.
     *
     * @throws FileTrouble also when there is a file of that name: a backup is never written over
     */
    public void backup(Path file) throws FileTrouble {
        database.copyTo(file);
    }

    /**
     * Reads all of the file and says what is wrong with it; empty when nothing is.
     *
     * @throws FileTrouble also when it is too damaged to be read
     */
    public List<String> check() throws FileTrouble {
        return database.read(session -> {
            List<String> wrong = new ArrayList<>(session.rows("pragma integrity_check", row -> row.getString(1)));
            wrong.remove("ok");
            wrong.addAll(session.rows(
                    "pragma foreign_key_check", row -> "a row of " + row.getString(1) + " belongs to no job"));
            wrong.addAll(session.rows("""
                    select job.id from job left join version on version.job = job.id
                    group by job.id having count(number) = 0 or max(number) <> count(number)""", row -> "versions of job " + row.getString(1) + " are missing"));
            return wrong;
        });
    }

    /** What tests look at and turn on. */
    Database database() {
        return database;
    }

    /** Waits for those who are reading or saving. */
    @Override
    public void close() {
        database.close();
    }
}
