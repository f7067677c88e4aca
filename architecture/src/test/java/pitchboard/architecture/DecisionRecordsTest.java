package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A decision that nothing holds is a wish, so each record names the tests that hold it, and they exist. */
final class DecisionRecordsTest {
    private static final Pattern HOLDER = Pattern.compile("`(\\w+Test)\\.(\\w+)`");

    static Stream<Path> everyRecord() {
        return Project.files(Project.ROOT.resolve("docs/decisions"), ".md").stream()
                .filter(file -> !file.endsWith("README.md"));
    }

    @ParameterizedTest
    @MethodSource("everyRecord")
    void it_has_its_parts_in_order(Path record) {
        assertThat(Project.text(record))
                .startsWith("# " + numberOf(record) + "  ")
                .containsSubsequence(
                        "\nStatus: ",
                        "\n## Question\n",
                        "\n## Options\n",
                        "\n## Decision\n",
                        "\n## Costs\n",
                        "\n## Held by\n",
                        "\n## Look again\n");
    }

    @ParameterizedTest
    @MethodSource("everyRecord")
    void the_tests_that_hold_it_exist(Path record) {
        String text = Project.text(record);
        String heldBy = text.substring(text.indexOf("\n## Held by\n"), text.indexOf("\n## Look again\n"));
        List<MatchResult> holders = HOLDER.matcher(heldBy).results().toList();
        assertThat(holders)
                .isNotEmpty()
                .allSatisfy(holder -> assertThat(testsNamed(holder.group(1)))
                        .as(holder.group())
                        .anyMatch(test -> test.contains("void " + holder.group(2) + "(")));
    }

    @Test
    void numbers_are_used_once() {
        assertThat(everyRecord().map(DecisionRecordsTest::numberOf))
                .isNotEmpty()
                .doesNotHaveDuplicates();
    }

    private static String numberOf(Path record) {
        return record.getFileName().toString().substring(0, 4);
    }

    private static List<String> testsNamed(String name) {
        return Stream.concat(Project.MODULES.stream(), Stream.of("architecture"))
                .map(module -> Project.ROOT.resolve(module).resolve("src/test/java"))
                .flatMap(folder -> Project.files(folder, "/" + name + ".java").stream())
                .map(Project::text)
                .toList();
    }
}
