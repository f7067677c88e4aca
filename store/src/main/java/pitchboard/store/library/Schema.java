package pitchboard.store.library;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import pitchboard.store.FileTrouble;

/**
 * The form of the database, as steps from an empty file to the newest. What was released is never edited: a change is one
 * more step.
 *
 * @param steps the first makes version 1
 */
record Schema(List<String> steps) {
    static final Schema RELEASED = new Schema(List.of(step(1)));

    /** Marks a file as a library of jobs: the letters "Ptch". */
    static final int APPLICATION = 0x50746368;

    Schema {
        steps = List.copyOf(steps);
    }

    private static String step(int version) {
        try (InputStream in = Schema.class.getResourceAsStream("schema-" + version + ".sql")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own schema cannot be read", broken);
        }
    }

    int newest() {
        return steps.size();
    }

    /** Looks without writing anything. */
    void requireKnown(Path file, Session session) throws SQLException, FileTrouble {
        boolean empty = session.number("select count(*) from sqlite_schema") == 0;
        int version = version(session);
        boolean fresh = empty && version == 0;
        if (!fresh && session.number("pragma application_id") != APPLICATION) {
            throw DatabaseTrouble.stranger(file);
        }
        if (version > newest()) {
            throw DatabaseTrouble.newer(file, version, newest());
        }
    }

    /**
     * Goes one step, inside a transaction of the caller's.
     *
     * @return whether there was one to go
     */
    boolean step(Session session) throws SQLException {
        // Also when there is no step to go: a file that cannot be written is told on opening, not at the first saving.
        session.run("pragma application_id = " + APPLICATION);
        int version = version(session);
        if (version >= newest()) {
            return false;
        }
        session.script(steps.get(version));
        session.run("pragma user_version = " + (version + 1));
        return true;
    }

    static int version(Session session) throws SQLException {
        return session.number("pragma user_version");
    }
}
