package pitchboard.store.library;

import java.nio.file.Path;
import java.sql.SQLException;
import pitchboard.store.FileTrouble;
import pitchboard.store.FileTrouble.Kind;

/** Says in plain words what a database has against being read or written, and what to do. */
final class DatabaseTrouble {
    private DatabaseTrouble() {}

    /** The codes are SQLite's own: sqlite.org/rescode.html. */
    static FileTrouble of(Path file, SQLException cause) {
        FileTrouble trouble = switch (cause.getErrorCode() & 0xff) {
            case 3, 8, 14, 23 -> new FileTrouble(file, Kind.NO_PERMISSION, """
                            nothing can be written there: give yourself permission to write the file and its folder, \
                            or keep the jobs in another folder""");
            case 5, 6 -> new FileTrouble(file, Kind.BUSY, """
                            another program has been writing in it for too long: close that program, or try again""");
            case 10 -> new FileTrouble(file, Kind.OTHER, """
                            reading or writing failed: see that the disk is still there and has room, then try again \
                            (%s)""".formatted(cause.getMessage()));
            case 11 -> new FileTrouble(file, Kind.NOT_UNDERSTOOD, """
                            it is damaged: leave it as it is, and go on with the newest backup""");
            case 13 -> new FileTrouble(file, Kind.NO_ROOM, """
                            the disk is full, so this was not saved; all that was saved before is kept. Make room on \
                            the disk, then save again""");
            case 26 -> stranger(file);
            default ->
                new FileTrouble(
                        file, Kind.OTHER, "the database does not answer as it should (" + cause.getMessage() + ")");
        };
        trouble.initCause(cause);
        return trouble;
    }

    static FileTrouble stranger(Path file) {
        return new FileTrouble(file, Kind.NOT_UNDERSTOOD, """
                this is no library of jobs, and it is left as it is: move it away, or name another file""");
    }

    static FileTrouble newer(Path file, int version, int known) {
        return new FileTrouble(file, Kind.NOT_UNDERSTOOD, """
                it was written by a newer Pitchboard (form %d, and this one knows %d), and it is left as it is: open it \
                with the newer Pitchboard""".formatted(version, known));
    }
}
