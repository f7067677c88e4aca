package pitchboard.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import pitchboard.RandomJobs;
import pitchboard.intake.ChangesText;
import pitchboard.intake.JobText;
import pitchboard.intake.Notes;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.intake.yard.YardText;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.store.FileTrouble;
import pitchboard.store.JobFile;
import pitchboard.store.JobFiles;
import pitchboard.store.YardFiles;

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

    static Path root() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("examples"))) {
            here = here.getParent();
        }
        return here;
    }

    /** An example, with its local changes. */
    static String example(Path file, String... sheets) {
        JobFile.Understood read = read(file);
        Optional<Written> changes = read.changes()
                .map(named -> ChangesText.write(
                        named.together(), read.notes().brief().tape().units()));
        return solve(read.notes(), changes, sheets);
    }

    private static JobFile.Understood read(Path file) {
        try {
            return (JobFile.Understood) JobFiles.open(file, BOOKS);
        } catch (FileTrouble trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    /** The job of an example as the program writes it. */
    static Written.Group job(Path file) {
        return JobText.write(read(file).notes());
    }

    /** One request of every other kind, and one for finite elements, about each two examples that follow one another. */
    static List<String> others() {
        List<Written.Group> jobs = exampleFiles().stream().map(Requests::job).toList();
        List<String> requests = new ArrayList<>(List.of(request("questions")));
        for (int i = 0; i < jobs.size(); i++) {
            Written.Group job = jobs.get(i);
            Written.Group next = jobs.get((i + 1) % jobs.size());
            requests.add(request("write", entry("job", job)));
            requests.add(request("buy", entry("job", job), entry("yard", yard()), text("sheets", "all")));
            requests.add(request("under", entry("job", job), books(i)));
            requests.add(request("solve", entry("job", job), text("elements", "yes")));
            requests.add(request("compare", entry("before", job), entry("after", next)));
            requests.add(request("merge", entry("base", job), entry("mine", without(job)), entry("theirs", next)));
            for (String units : List.of("inches", "millimetres")) {
                requests.add(request("convert", entry("job", job), text("units", units)));
                requests.add(request("length", text("text", i + "' 3 1/" + (i + 3) + "\""), text("units", units)));
            }
        }
        return requests;
    }

    /** The price list of the examples as the program writes it. */
    static Written yard() {
        try {
            Path file = root().resolve("examples/yard/harbour-street-timber.yaml");
            return YardText.write(((YardText.Understood) YardFiles.open(file)).yard());
        } catch (FileTrouble trouble) {
            throw new IllegalStateException(trouble);
        }
    }

    /** Two books that are not the same for every job. */
    private static Written.Entry books(int job) {
        List<Written> names = IntStream.of(job, job + 5)
                .mapToObj(each -> (Written) new Written.Text(BOOKS.get(each % BOOKS.size())))
                .toList();
        return entry("books", new Written.Sequence(Spot.NOWHERE, names));
    }

    /** Without its last line. */
    private static Written.Group without(Written.Group job) {
        return new Written.Group(
                job.at(), job.entries().subList(0, job.entries().size() - 1));
    }

    /** Random jobs under each of the books in turn, those first that the seeds make first. */
    static Stream<String> random() {
        return LongStream.iterate(0, seed -> seed + 1).mapToObj(Requests::random);
    }

    private static String random(long seed) {
        RandomJobs.Asked asked = RandomJobs.of(seed);
        String book = BOOKS.get((int) (seed % BOOKS.size()));
        return solve(Notes.of(asked.site(), asked.brief(), book, Optional.empty()), Optional.empty());
    }

    private static String solve(Notes notes, Optional<Written> changes, String... sheets) {
        List<Written.Entry> entries = new ArrayList<>();
        entries.add(entry("job", JobText.write(notes)));
        changes.ifPresent(known -> entries.add(entry("changes", known)));
        if (sheets.length > 0) {
            List<Written> ids =
                    Stream.of(sheets).<Written>map(Written.Text::new).toList();
            entries.add(
                    sheets[0].equals("all")
                            ? text("sheets", "all")
                            : entry("sheets", new Written.Sequence(Spot.NOWHERE, ids)));
        }
        return request("solve", entries.toArray(Written.Entry[]::new));
    }

    static String request(String task, Written.Entry... entries) {
        List<Written.Entry> all = new ArrayList<>(List.of(text("do", task)));
        all.addAll(List.of(entries));
        return JsonWriter.write(new Written.Group(Spot.NOWHERE, all));
    }

    static Written.Entry text(String key, String words) {
        return entry(key, new Written.Text(words));
    }

    static Written.Entry entry(String key, Written value) {
        return new Written.Entry(key, value);
    }
}
