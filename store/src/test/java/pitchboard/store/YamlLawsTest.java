package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.Written.Entry;
import pitchboard.intake.written.YamlWriter;

/** What was written as YAML comes back as it was, through a reader that did not come from the same hands. */
final class YamlLawsTest {
    private static final String ODD = "ab 09:#-'\"\\/{}[],&*!|>%@`~=?\t\n\u0001\u0085\u00e9\u2028\ufeff";

    @Test
    void yaml_gives_back_every_tree() {
        for (int seed = 0; seed < 2000; seed++) {
            Written.Group tree = group(new SplittableRandom(seed), 4);
            String yaml = YamlWriter.write(tree);
            Transcript read = YamlReader.read(yaml);
            assertThat(read).as("seed %d:%n%s", seed, yaml).isInstanceOf(Transcript.Legible.class);
            Written written = ((Transcript.Legible) read).written();
            assertThat(written.anywhere()).as("seed %d:%n%s", seed, yaml).isEqualTo(tree);
        }
    }

    private static Written.Group group(SplittableRandom random, int depth) {
        List<Entry> entries = new ArrayList<>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            entries.add(new Entry(i + text(random), tree(random, depth - 1)));
        }
        return new Written.Group(Spot.NOWHERE, entries);
    }

    private static Written tree(SplittableRandom random, int depth) {
        int kind = depth == 0 ? 0 : random.nextInt(5);
        if (kind < 2) {
            return new Written.Text(text(random));
        }
        if (kind == 2) {
            return group(random, depth);
        }
        List<Written> items = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            items.add(tree(random, depth - 1));
        }
        return kind == 3 ? new Written.Sequence(Spot.NOWHERE, items) : new Written.Group(Spot.NOWHERE, List.of());
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            text.append(ODD.charAt(random.nextInt(ODD.length())));
        }
        return text.toString();
    }
}
