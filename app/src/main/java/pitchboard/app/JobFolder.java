package pitchboard.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A folder of job files. */
public final class JobFolder {
    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json");

    private JobFolder() {}

    /**
     * The job files in a folder, by name; not those in folders below it.
     *
     * @throws IOException when the folder cannot be read
     */
    public static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> Files.isRegularFile(file) && isJobFile(file))
                    .sorted()
                    .toList();
        } catch (UncheckedIOException wrapped) {
            throw wrapped.getCause();
        }
    }

    private static boolean isJobFile(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return !name.startsWith(".") && ENDINGS.stream().anyMatch(name::endsWith);
    }

    /** The file's name without its ending, for the papers made from it. */
    public static String stem(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
