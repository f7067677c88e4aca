package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Problem;
import pitchboard.job.Fingerprint;
import pitchboard.job.Job;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** The first file of a new job holds as it stands, and so does every other way it offers. */
final class StarterTest {
    private static final String OTHER_WAY = "#| ";

    @TempDir
    Path folder;

    @Test
    void it_gives_a_stair_that_breaks_no_rule_as_it_stands() throws IOException, FileTrouble {
        Notes notes = notes(Starter.text());
        Rulebook book = Books.findByName(notes.rulebook()).orElseThrow();
        Outcome outcome = Pipeline.solve(new Job(notes.site(), notes.brief(), book, new Fingerprint("")));
        assertThat(outcome).isInstanceOfSatisfying(Outcome.Designed.class, designed -> {
            assertThat(designed.findings()).isNotEmpty();
            assertThat(designed.hasFailures()).isFalse();
        });
    }

    @Test
    void every_line_explains_itself() {
        assertThat(Starter.text().lines().filter(line -> !line.isBlank() && !line.contains(OTHER_WAY)))
                .hasSizeGreaterThan(40)
                .allSatisfy(line -> assertThat(line).contains("# "));
    }

    @Test
    void it_offers_other_ways() {
        assertThat(otherWays()).hasSizeGreaterThan(30);
    }

    @ParameterizedTest
    @MethodSource("otherWays")
    void every_other_way_can_be_taken(List<String> way) throws IOException, FileTrouble {
        Files.copy(Path.of("../examples/local/county-changes.yaml"), folder.resolve("county.yaml"));
        assertThat(notes(taken(way))).isNotEqualTo(notes(Starter.text()));
    }

    /** Lines behind the sign that stand together are one way, until a name comes again. */
    static List<List<String>> otherWays() {
        List<List<String>> ways = new ArrayList<>();
        Set<String> names = new HashSet<>();
        boolean together = false;
        for (String line : Starter.text().split("\n", -1)) {
            boolean other = line.strip().startsWith(OTHER_WAY);
            if (other) {
                boolean again = findName(line).filter(name -> !names.add(name)).isPresent();
                if (!together || again) {
                    ways.add(new ArrayList<>());
                    names.clear();
                    findName(line).ifPresent(names::add);
                }
                ways.get(ways.size() - 1).add(line);
            }
            together = other;
        }
        return ways;
    }

    /** The name a line begins with; none where it is a part of the line above. */
    private static Optional<String> findName(String line) {
        String said = line.replace(OTHER_WAY, "");
        int indent = line.length() - line.stripLeading().length();
        boolean below = said.startsWith(" ", indent);
        return below || !said.contains(":") ? Optional.empty() : Optional.of(said.substring(0, said.indexOf(':') + 1));
    }

    /** The starter with one other way in it, and without the lines of the same names. */
    private static String taken(List<String> way) {
        List<String> struck = way.stream()
                .flatMap(line -> findName(line).stream())
                .map(name -> name.replace("level line:", "rise:"))
                .toList();
        StringBuilder text = new StringBuilder();
        for (String line : Starter.text().split("\n", -1)) {
            String kept = way.contains(line) ? line.replace(OTHER_WAY, "") : line;
            if (!kept.equals(line) || struck.stream().noneMatch(line::startsWith)) {
                text.append(kept).append('\n');
            }
        }
        return text.toString();
    }

    private Notes notes(String text) throws IOException, FileTrouble {
        List<String> books = Books.all().stream().map(Rulebook::name).toList();
        return JobFiles.open(Files.writeString(folder.resolve("new.yaml"), text), books)
                .match(JobFile.Understood::notes, unread -> {
                    throw new AssertionError(
                            unread.problems().stream().map(Problem::sentence).toList());
                });
    }
}
