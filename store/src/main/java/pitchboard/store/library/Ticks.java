package pitchboard.store.library;

import java.time.Clock;
import java.util.List;
import pitchboard.store.FileTrouble;

/** What was checked off, job by job. It belongs to the job and not to a version. */
public final class Ticks {
    private static final String IS_JOB = "select count(*) from job where id = ?";

    private final Database database;
    private final Clock clock;

    Ticks(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** In the order they were made; none for a job that is not there. */
    public List<Tick> of(String job) throws FileTrouble {
        return database.read(session -> session.rows(
                "select name, made from tick where job = ? order by entry",
                columns -> new Tick(columns.getString("name"), Jobs.time(columns, "made")),
                job));
    }

    /**
     * Checks off; once is enough.
     *
     * @return false when there is no such job
     */
    public boolean put(String job, String name) throws FileTrouble {
        Wording.requireWhole(name);
        return database.write(session -> {
            if (session.number(IS_JOB, job) == 0) {
                return false;
            }
            session.run(
                    "insert into tick (job, name, made) values (?, ?, ?) on conflict do nothing",
                    job,
                    name,
                    clock.millis());
            return true;
        });
    }

    /**
     * Takes a check-off back.
     *
     * @return false when there is no such job
     */
    public boolean remove(String job, String name) throws FileTrouble {
        return database.write(session -> {
            session.run("delete from tick where job = ? and name = ?", job, name);
            return session.number(IS_JOB, job) == 1;
        });
    }
}
