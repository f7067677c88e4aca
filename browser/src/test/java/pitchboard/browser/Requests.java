package pitchboard.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import pitchboard.RandomJobs;
import pitchboard.intake.ChangesText;
import pitchboard.intake.JobText;
import pitchboard.intake.Notes;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Written;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.store.FileTrouble;
import pitchboard.store.JobFile;
import pitchboard.store.JobFiles;

/** Requests to try the engine with. */
final class Requests {
    private static final List<String> BOOKS =
            Books.all().stream().map(Rulebook::name).toList();

    private Requests() {}

    static List<Path> exampleFiles() {
        try (Stream<Path> files = Files.list(root().resolve("examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("examples"))) {
            here = here.getParent();
        }
        return here;
    }

    /** An example, with its local changes. */
    static String example(Path file, String... sheets) {
        try {
            JobFile.Understood read = (JobFile.Understood) JobFiles.open(file, BOOKS);
            Optional<Written> changes = read.changes()
                    .map(named -> ChangesText.write(
                            named.local(), read.notes().brief().tape().units()));
            return request(read.notes(), changes, sheets);
        } catch (FileTrouble trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    /** Random jobs under each of the books in turn, those first that the seeds make first. */
    static Stream<String> random() {
        return LongStream.iterate(0, seed -> seed + 1).mapToObj(Requests::random);
    }

    private static String random(long seed) {
        RandomJobs.Asked asked = RandomJobs.of(seed);
        String book = BOOKS.get((int) (seed % BOOKS.size()));
        return request(new Notes(asked.site(), asked.brief(), book, Optional.empty()), Optional.empty());
    }

    private static String request(Notes notes, Optional<Written> changes, String... sheets) {
        List<Written.Entry> entries = new ArrayList<>();
        entries.add(new Written.Entry("do", new Written.Text("solve")));
        entries.add(new Written.Entry("job", JobText.write(notes)));
        changes.ifPresent(known -> entries.add(new Written.Entry("changes", known)));
        if (sheets.length > 0) {
            List<Written> ids =
                    Stream.of(sheets).<Written>map(Written.Text::new).toList();
            entries.add(new Written.Entry(
                    "sheets",
                    sheets[0].equals("all")
                            ? new Written.Text("all")
                            : new Written.Sequence(pitchboard.intake.written.Spot.NOWHERE, ids)));
        }
        return JsonWriter.write(new Written.Group(pitchboard.intake.written.Spot.NOWHERE, entries));
    }
}
