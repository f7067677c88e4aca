package pitchboard.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The lists in the pages are the lists in the code. {@code mvn test -Dpitchboard.write=true} writes them anew; a reader
 * then sees in the difference what changed.
 */
final class DocsUpToDateTest {
    private static final Path PAGE = Project.ROOT.resolve("docs/architecture.md");

    @Test
    void the_table_of_packages_is_the_one_that_is_tested() throws IOException {
        check("packages", House.PITCHBOARD.asMarkdown());
    }

    @Test
    void the_list_of_what_the_engine_may_not_touch_is_the_one_that_is_tested() throws IOException {
        check("forbidden", Forbidden.asMarkdown());
    }

    private static void check(String name, String list) throws IOException {
        Matcher found = Pattern.compile(
                        "(<!-- %s: written by a test -->\n\n)(.*?)(\n<!-- end -->)".formatted(name), Pattern.DOTALL)
                .matcher(Project.text(PAGE));
        assertThat(found.find()).as("place for " + name + " in " + PAGE).isTrue();
        if (Boolean.getBoolean("pitchboard.write")) {
            Files.writeString(PAGE, found.replaceFirst("$1" + Matcher.quoteReplacement(list) + "$3"));
        } else {
            assertThat(found.group(2)).isEqualTo(list);
        }
    }
}
