package pitchboard.web;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Where programs of this system keep what people made with them. */
final class DataFolder {
    private DataFolder() {}

    static Path usual() {
        return of(System.getProperty("os.name"), System.getProperty("user.home"), System::getenv);
    }

    /**
     * The folder on a system.
     *
     * @param variable the environment's value of a name; null when it has none
     */
    static Path of(String system, String home, UnaryOperator<String> variable) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return find(variable, "APPDATA")
                    .orElse(Path.of(home, "AppData", "Roaming"))
                    .resolve("Pitchboard");
        }
        if (name.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", "Pitchboard");
        }
        // XDG Base Directory Specification 0.8: a path that is not absolute is to be ignored.
        return find(variable, "XDG_DATA_HOME")
                .filter(Path::isAbsolute)
                .orElse(Path.of(home, ".local", "share"))
                .resolve("pitchboard");
    }

    private static Optional<Path> find(UnaryOperator<String> variable, String name) {
        return Optional.ofNullable(variable.apply(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
