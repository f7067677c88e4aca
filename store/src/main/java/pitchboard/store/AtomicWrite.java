package pitchboard.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * Writes a file whole or not at all: beside its place first, then moved there in one step. When anything fails, what
 * stood there before still does, and nothing half written is left. What people said goes down to the disk before it
 * counts as written; what can be made again from it does not wait for the disk.
 */
public final class AtomicWrite {
    private static final int MOST_TRIES = 100;

    private AtomicWrite() {}

    /** What is to stand in the file. */
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Somebody else who writes the file, by its name. */
    public interface Filling {
        /** @param beside an empty file that is there already */
        void fill(Path beside) throws IOException, FileTrouble;
    }

    /** Writes something that can be made again, over a file that is there already. */
    public static void made(Path file, Content content) throws FileTrouble {
        write(file, content, true, false);
    }

    /** The same with a text. */
    public static void madeText(Path file, String text) throws FileTrouble {
        made(file, bytes(text));
    }

    /** Writes what somebody said, over a file that is there already. */
    public static void text(Path file, String text) throws FileTrouble {
        write(file, bytes(text), true, true);
    }

    private static Content bytes(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes the file unless one is there already: that is trouble, and it stays as it is. */
    public static void newText(Path file, String text) throws FileTrouble {
        write(file, bytes(text), false, true);
    }

    /** The same, filled by somebody who needs a name to write to. */
    public static void newFile(Path file, Filling filling) throws FileTrouble {
        place(
                file,
                beside -> {
                    filling.fill(beside);
                    try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE)) {
                        channel.force(true);
                    }
                },
                false);
    }

    /** Makes a folder, and those around it, unless it is there already. */
    public static void folder(Path folder) throws FileTrouble {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException cause) {
            throw new FileTrouble(folder, "this is a file, not a folder");
        } catch (IOException cause) {
            throw FileTrouble.of(folder, cause);
        }
    }

    /** Takes a file away, if it is there. */
    public static void gone(Path file) throws FileTrouble {
        try {
            Files.deleteIfExists(file);
        } catch (IOException cause) {
            throw FileTrouble.of(file, cause);
        }
    }

    private static void write(Path file, Content content, boolean over, boolean toDisk) throws FileTrouble {
        place(file, beside -> fill(beside, content, toDisk), over);
    }

    private static void place(Path file, Filling filling, boolean over) throws FileTrouble {
        if (Files.isDirectory(file)) {
            throw new FileTrouble(file, "a folder of this name is in the way");
        }
        if (!over && Files.exists(file)) {
            throw new FileTrouble(file, "is there already and is not written over");
        }
        try {
            Path place = Files.isSymbolicLink(file) ? file.toRealPath() : file;
            Path beside = beside(place.toAbsolutePath());
            try {
                filling.fill(beside);
                move(beside, place);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException cause) {
            throw FileTrouble.of(file, cause);
        }
    }

    /** A name that nobody has yet, made here so that two writers never share it. */
    private static Path beside(Path place) throws IOException {
        for (int tries = 1; ; tries++) {
            Path beside = place.resolveSibling("." + place.getFileName() + "." + tries + ".part");
            try {
                return Files.createFile(beside);
            } catch (FileAlreadyExistsException taken) {
                if (tries == MOST_TRIES) {
                    throw taken;
                }
            }
        }
    }

    private static void fill(Path beside, Content content, boolean toDisk) throws IOException {
        try (FileChannel channel = FileChannel.open(beside, StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            content.writeTo(out);
            out.flush();
            if (toDisk) {
                channel.force(true);
            }
        }
    }

    private static void move(Path beside, Path place) throws IOException {
        try {
            Files.move(beside, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException plain) {
            Files.move(beside, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
