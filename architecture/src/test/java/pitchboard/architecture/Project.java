package pitchboard.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where the project lies on disk. */
final class Project {
    /** The modules that go into the program. */
    static final List<String> MODULES = List.of("engine", "documents", "store", "app", "cli", "browser", "web");

    static final Path ROOT = root();

    private Project() {}

    /** Tests start in the folder of their module, so the root is here or above. */
    private static Path root() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve(".mvn"))) {
            folder = folder.getParent();
            if (folder == null) {
                throw new IllegalStateException("not inside the project");
            }
        }
        return folder;
    }

    static Path sources(String module) {
        return ROOT.resolve(module).resolve("src/main/java");
    }

    /** Every Java file below a folder, in the order of names; none when there is no such folder. */
    static List<Path> javaFiles(Path folder) {
        return files(folder, ".java");
    }

    static List<Path> files(Path folder, String ending) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
