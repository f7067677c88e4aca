package pitchboard.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** A file or folder that could not be read or written: one sentence for whoever asked for it. */
public final class FileTrouble extends Exception {
    private final transient Path path;

    FileTrouble(Path path, String why) {
        super(path + ": " + why);
        this.path = path;
    }

    static FileTrouble of(Path path, IOException cause) {
        FileTrouble trouble = new FileTrouble(path, words(cause));
        trouble.initCause(cause);
        return trouble;
    }

    /** What could not be read or written. */
    public Path path() {
        return path;
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
