package pitchboard.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** A file or folder that could not be read or written: one sentence for whoever asked for it. */
public final class FileTrouble extends Exception {
    /** What a caller may want to answer differently. */
    public enum Kind {
        /** The disk is full. */
        NO_ROOM,
        /** Nothing may be written there, or not even read. */
        NO_PERMISSION,
        /** Another program holds it; trying again may help. */
        BUSY,
        /** It can be read, but is not what it should be: something else, damaged, or of a newer program. */
        NOT_UNDERSTOOD,
        OTHER
    }

    private final transient Path path;
    private final Kind kind;

    FileTrouble(Path path, String why) {
        this(path, Kind.OTHER, why);
    }

    /** @param why what is wrong and what to do, to follow the path and a colon */
    public FileTrouble(Path path, Kind kind, String why) {
        super(path + ": " + why);
        this.path = path;
        this.kind = kind;
    }

    static FileTrouble of(Path path, IOException cause) {
        FileTrouble trouble = new FileTrouble(path, kind(cause), words(cause));
        trouble.initCause(cause);
        return trouble;
    }

    /** What could not be read or written. */
    public Path path() {
        return path;
    }

    public Kind kind() {
        return kind;
    }

    private static Kind kind(IOException cause) {
        if (cause instanceof AccessDeniedException) {
            return Kind.NO_PERMISSION;
        }
        // Java has no exception of its own for a full disk: the system's words are all there is.
        String words = String.valueOf(cause.getMessage());
        if (words.contains("No space left") || words.contains("not enough space")) {
            return Kind.NO_ROOM;
        }
        return words.contains("Read-only file system") ? Kind.NO_PERMISSION : Kind.OTHER;
    }

    private static String words(IOException cause) {
        if (cause instanceof NoSuchFileException) {
            return "there is no such file or folder";
        }
        if (cause instanceof AccessDeniedException) {
            return "no permission to read or write here";
        }
        if (cause instanceof NotDirectoryException) {
            return "part of this path is a file, not a folder";
        }
        boolean known = cause instanceof FileSystemException system && system.getReason() != null;
        return known
                ? ((FileSystemException) cause).getReason()
                : "reading or writing failed (" + cause.getMessage() + ")";
    }
}
