package pitchboard.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * One command, run in this process.
 *
 * @param out what it printed as its result
 * @param err progress and problems
 */
record Run(int code, String out, String err) {
    static final Path ROOT = root();

    static Run of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new Run(code, out.toString(), err.toString());
    }

    /** Every example, by name. */
    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve("examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    static Path example(String name) {
        return ROOT.resolve("examples").resolve(name + ".yaml");
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("examples"))) {
            here = here.getParent();
        }
        return here;
    }
}
