package pitchboard.store.library;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchboard.store.Notation;

/** The tables of jobs and versions, seen through one session. */
final class Jobs {
    private static final String VERSION = """
            select job.id, job.archived, number, saved, device, note, name, place, notation, text, changes_notation, changes
            from job join version on version.job = job.id
            where job.id = ?1 and number =""";
    private static final String NEWEST = "(select max(number) from version where job = ?1)";

    private final Session session;
    private final Clock clock;

    Jobs(Session session, Clock clock) {
        this.session = session;
        this.clock = clock;
    }

    Optional<Job> findNewest(String id) throws SQLException {
        return session.findRow(VERSION + NEWEST, Jobs::job, id);
    }

    Optional<Job> findVersion(String id, int number) throws SQLException {
        return session.findRow(VERSION + "?2", Jobs::job, id, number);
    }

    /** Newest first. */
    List<Version.Line> versions(String id) throws SQLException {
        return session.rows(
                "select number, saved, device, note from version where job = ? order by number desc",
                columns -> new Version.Line(columns.getInt("number"), time(columns, "saved"), by(columns)),
                id);
    }

    Job create(Draft draft, By by) throws SQLException {
        String id = Chance.freeName(name -> session.number("select count(*) from job where id = ?", name) == 0);
        session.run("insert into job (id) values (?)", id);
        return new Job(id, false, add(id, 1, draft, by));
    }

    Saving save(String id, int base, Draft draft, By by) throws SQLException {
        Optional<Version> found = findNewest(id).map(Job::version);
        if (found.isEmpty()) {
            return new Saving.Unknown();
        }
        Version newest = found.get();
        if (draft.addsNothingTo(newest.draft())) {
            return new Saving.Unchanged(newest);
        }
        return newest.number() == base ? new Saving.Saved(add(id, base + 1, draft, by)) : new Saving.Conflict(newest);
    }

    Saving restore(String id, int number, By by) throws SQLException {
        Optional<Version> old = findVersion(id, number).map(Job::version);
        if (old.isEmpty()) {
            return new Saving.Unknown();
        }
        Version newest = findNewest(id).orElseThrow().version();
        // Letter for letter: what is brought back must be what it was, also where it means the same as what stands.
        return old.get().draft().equals(newest.draft())
                ? new Saving.Unchanged(newest)
                : new Saving.Saved(add(id, newest.number() + 1, old.get().draft(), by));
    }

    Optional<Job> copy(String id, By by) throws SQLException {
        Optional<Job> original = findNewest(id);
        return original.isEmpty()
                ? Optional.empty()
                : Optional.of(create(original.get().version().draft(), by));
    }

    boolean put(String id, Search.Shelf shelf) throws SQLException {
        return session.run("update job set archived = ? where id = ?", archived(shelf), id) == 1;
    }

    List<Job.Line> list(Search search) throws SQLException {
        Folded words = Folded.of(search.words());
        return session.rows("""
                        select job.id, archived, number, saved, name, place
                        from job join version on version.job = job.id
                          and number = (select max(number) from version where job = job.id)
                        where archived = ?
                        order by entry desc""", Jobs::line, archived(search.shelf())).stream()
                .filter(line -> Folded.found(words, line.name(), line.place()))
                .limit(search.most())
                .toList();
    }

    private Version add(String id, int number, Draft draft, By by) throws SQLException {
        Instant now = Instant.ofEpochMilli(clock.millis());
        session.run(
                """
                insert into version
                  (job, number, saved, device, note, name, place, notation, text, changes_notation, changes)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""",
                id,
                number,
                now.toEpochMilli(),
                by.device(),
                by.note(),
                draft.name(),
                draft.place(),
                word(draft.job().notation()),
                draft.job().text(),
                draft.changes().map(changes -> word(changes.notation())).orElse(null),
                draft.changes().map(Wording::text).orElse(null));
        return new Version(number, now, by, draft);
    }

    private static Job job(ResultSet columns) throws SQLException {
        Wording text = new Wording(notation(columns.getString("notation")), columns.getString("text"));
        String changes = columns.getString("changes");
        Optional<Wording> local = changes == null
                ? Optional.empty()
                : Optional.of(new Wording(notation(columns.getString("changes_notation")), changes));
        Draft draft = new Draft(text, local, columns.getString("name"), columns.getString("place"));
        Version version = new Version(columns.getInt("number"), time(columns, "saved"), by(columns), draft);
        return new Job(columns.getString("id"), columns.getBoolean("archived"), version);
    }

    private static Job.Line line(ResultSet columns) throws SQLException {
        return new Job.Line(
                columns.getString("id"),
                columns.getString("name"),
                columns.getString("place"),
                columns.getInt("number"),
                time(columns, "saved"),
                columns.getBoolean("archived"));
    }

    private static By by(ResultSet columns) throws SQLException {
        return new By(columns.getString("device"), columns.getString("note"));
    }

    static Instant time(ResultSet columns, String name) throws SQLException {
        return Instant.ofEpochMilli(columns.getLong(name));
    }

    private static int archived(Search.Shelf shelf) {
        return shelf == Search.Shelf.ARCHIVED ? 1 : 0;
    }

    private static String word(Notation notation) {
        return notation.name().toLowerCase(Locale.ROOT);
    }

    private static Notation notation(String word) {
        return Notation.valueOf(word.toUpperCase(Locale.ROOT));
    }
}
