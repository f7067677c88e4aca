package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of the documentation with parts that a test writes: {@code mvn test -Dpitchboard.write=true} writes them anew.
 */
record Page(Path file) {
    static Page named(String name) {
        return new Page(Run.ROOT.resolve(name));
    }

    /** Holds the part of this name against what it should be. */
    void holds(String part, String text) throws IOException {
        Matcher found = Pattern.compile(
                        "(<!-- " + part + ": written by a test -->\n\n)(.*?)(\n?<!-- end -->)", Pattern.DOTALL)
                .matcher(Files.readString(file));
        assertThat(found.find()).as("place for " + part + " in " + file).isTrue();
        if (Boolean.getBoolean("pitchboard.write")) {
            Files.writeString(file, found.replaceFirst("$1" + Matcher.quoteReplacement(text) + "$3"));
        } else {
            assertThat(found.group(2)).as("run with -Dpitchboard.write=true").isEqualTo(text);
        }
    }

    /** Holds the whole file against what it should be. */
    void is(String text) throws IOException {
        if (Boolean.getBoolean("pitchboard.write")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } else {
            assertThat(Files.readString(file))
                    .as("run with -Dpitchboard.write=true")
                    .isEqualTo(text);
        }
    }
}
