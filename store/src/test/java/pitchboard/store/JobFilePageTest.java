package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchboard.rules.Amendment;

/** What the page on job files shows can be read. */
final class JobFilePageTest {
    @TempDir
    Path folder;

    @Test
    void local_changes_say_the_same_as_yaml_and_as_json() throws IOException, FileTrouble {
        List<Amendment> yaml = shown("yaml", "based on: ");
        assertThat(yaml).extracting(Amendment::rule).containsExactly("rise-at-most");
        assertThat(shown("json", "{")).isEqualTo(yaml);
    }

    @Test
    void what_is_not_sure_is_said_as_shown() throws IOException, FileTrouble {
        String loft = Files.readString(Path.of("../examples/boathouse-loft.yaml"));
        String job = loft.replaceFirst("rise: 8' 9 3/4\"", Matcher.quoteReplacement(block("yaml", "rise: ")));
        assertThat(job).isNotEqualTo(loft);
        Path file = Files.writeString(folder.resolve("job.yaml"), job);
        assertThat(JobFiles.open(file, List.of())).isInstanceOf(JobFile.Understood.class);
    }

    private List<Amendment> shown(String language, String beginning) throws IOException, FileTrouble {
        Path file = Files.writeString(folder.resolve("town." + language), block(language, beginning));
        return JobFiles.openChanges(file, List.of("IRC 2021"))
                .match(read -> read.changes().amendments(), unread -> {
                    throw new AssertionError(unread.problems());
                });
    }

    private static String block(String language, String beginning) throws IOException {
        Matcher block = Pattern.compile(
                        "```" + language + "\n(" + Pattern.quote(beginning) + ".*?)\n```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("../docs/job-file.md")));
        assertThat(block.find()).isTrue();
        return block.group(1);
    }
}
