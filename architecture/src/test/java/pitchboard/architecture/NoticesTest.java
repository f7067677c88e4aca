package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The notices name every library the program runs with, and no other. */
final class NoticesTest {
    /** As the builds of the two programs write it down: {@code group:name:jar:version:scope}. */
    private static final List<Path> RUN_WITH =
            List.of(Project.ROOT.resolve("cli/target/runs-with.txt"), Project.ROOT.resolve("web/target/runs-with.txt"));

    private static final Pattern RESOLVED = Pattern.compile("(?m)^ +([^:\\s]+:[^:\\s]+):jar:([^:\\s]+):");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| ([^|:\\s]+:[^|\\s]+) \\| (\\S+) \\| (\\S[^|]*) \\|");

    @Test
    void the_notices_name_what_the_program_runs_with() {
        SortedMap<String, String> libraries = new TreeMap<>();
        RUN_WITH.forEach(list -> libraries.putAll(pairs(RESOLVED, Project.text(list))));
        libraries.keySet().removeIf(name -> name.startsWith("pitchboard:"));
        assertThat(libraries).isNotEmpty();
        assertThat(pairs(ROW, Project.text(Project.ROOT.resolve("THIRD-PARTY-NOTICES.md"))))
                .isEqualTo(libraries);
    }

    private static SortedMap<String, String> pairs(Pattern pattern, String text) {
        SortedMap<String, String> pairs = new TreeMap<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            pairs.put(matcher.group(1), matcher.group(2));
        }
        return pairs;
    }
}
