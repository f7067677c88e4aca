package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.store.FileTrouble;
import pitchboard.store.Notation;

/** Whatever is done in whatever order, the library holds what a plain list of drafts for each job would. */
final class SavingLawsTest {
    private static final String[] ODD = {
        "a",
        "Z",
        "ı",
        "İ",
        "é",
        "e\u0301",
        "ß",
        "'",
        "\"",
        "\\",
        "`",
        ";",
        "--",
        "%",
        "_",
        "?1",
        "\n",
        "\r\n",
        "\t",
        "\0",
        "\u0001",
        "\u001b",
        "\u0085",
        "\u2028",
        "\ufeff",
        "\ufffd",
        "\uffff",
        "\ud83e\ude9a",
        " ",
        ":",
        "{",
        "]",
        "#"
    };

    @TempDir
    Path folder;

    private final Map<String, List<Draft>> told = new LinkedHashMap<>();
    private final Map<String, List<By>> tellers = new LinkedHashMap<>();

    @Test
    void every_acknowledged_save_is_found_again_in_order() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            for (int seed = 0; seed < 400; seed++) {
                step(library, new SplittableRandom(seed));
            }
            assertHolds(library);
        }
        try (JobLibrary library = Crew.library(folder)) {
            assertHolds(library);
            assertThat(library.check()).isEmpty();
        }
    }

    private void step(JobLibrary library, SplittableRandom random) throws FileTrouble {
        Draft draft = draft(random);
        By by = new By(text(random), text(random));
        if (told.isEmpty() || random.nextInt(12) == 0) {
            keep(library.create(draft, by).id(), draft, by);
            return;
        }
        String id = List.copyOf(told.keySet()).get(random.nextInt(told.size()));
        List<Draft> drafts = told.get(id);
        int newest = drafts.size();
        switch (random.nextInt(6)) {
            case 0 -> restore(library, id, random.nextInt(1, newest + 1), by);
            case 1 -> save(library, id, random.nextInt(newest + 2), draft, by);
            case 2 -> save(library, id, newest, drafts.get(newest - 1), by);
            case 3 -> keep(library.copy(id, by).orElseThrow().id(), drafts.get(newest - 1), by);
            default -> save(library, id, newest, draft, by);
        }
    }

    private void save(JobLibrary library, String id, int base, Draft draft, By by) throws FileTrouble {
        List<Draft> drafts = told.get(id);
        String expected = drafts.get(drafts.size() - 1).addsNothingTo(draft)
                ? "unchanged " + drafts.size()
                : base == drafts.size() ? "saved " + (base + 1) : "conflict " + drafts.size();
        assertThat(words(library.save(id, base, draft, by))).isEqualTo(expected);
        if (expected.startsWith("saved")) {
            keep(id, draft, by);
        }
    }

    private void restore(JobLibrary library, String id, int number, By by) throws FileTrouble {
        List<Draft> drafts = told.get(id);
        Draft old = drafts.get(number - 1);
        boolean same = old.equals(drafts.get(drafts.size() - 1));
        assertThat(words(library.restore(id, number, by)))
                .isEqualTo(same ? "unchanged " + drafts.size() : "saved " + (drafts.size() + 1));
        if (!same) {
            keep(id, old, by);
        }
    }

    private static String words(Saving saving) {
        return saving.<String>match(
                saved -> "saved " + saved.version().number(),
                unchanged -> "unchanged " + unchanged.version().number(),
                conflict -> "conflict " + conflict.newest().number(),
                unknown -> "unknown");
    }

    private void keep(String id, Draft draft, By by) {
        told.computeIfAbsent(id, any -> new ArrayList<>()).add(draft);
        tellers.computeIfAbsent(id, any -> new ArrayList<>()).add(by);
    }

    private void assertHolds(JobLibrary library) throws FileTrouble {
        assertThat(library.list(Crew.all()))
                .extracting(Job.Line::id)
                .containsExactlyInAnyOrderElementsOf(told.keySet());
        for (String id : told.keySet()) {
            List<Draft> drafts = new ArrayList<>();
            List<By> by = new ArrayList<>();
            for (int number = 1; number <= library.versions(id).size(); number++) {
                Version version = library.findVersion(id, number).orElseThrow().version();
                assertThat(version.number()).isEqualTo(number);
                drafts.add(version.draft());
                by.add(version.by());
            }
            assertThat(drafts).isEqualTo(told.get(id));
            assertThat(by).isEqualTo(tellers.get(id));
        }
    }

    private static Draft draft(SplittableRandom random) {
        Optional<Wording> changes = random.nextInt(3) == 0 ? Optional.of(wording(random)) : Optional.empty();
        return new Draft(wording(random), changes, text(random), text(random));
    }

    private static Wording wording(SplittableRandom random) {
        return new Wording(random.nextBoolean() ? Notation.YAML : Notation.JSON, text(random));
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(10); i > 0; i--) {
            text.append(ODD[random.nextInt(ODD.length)]);
        }
        return text.toString();
    }
}
