package pitchboard.intake.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pitchboard.intake.written.Written.Entry;

/** What was written as JSON comes back as it was. */
final class WrittenLawsTest {
    private static final String ODD = "ab 09:#-'\"\\/{}[],&*!|>%@`~=?\t\n\u0001\u0085\u00e9\u2028\ufeff";

    @Test
    void json_gives_back_every_tree() {
        for (int seed = 0; seed < 2000; seed++) {
            Written tree = tree(new SplittableRandom(seed), 4);
            Transcript read = JsonReader.read(JsonWriter.write(tree));
            assertThat(read).as("seed %d", seed).isInstanceOf(Transcript.Legible.class);
            Written written = ((Transcript.Legible) read).written();
            assertThat(written.anywhere()).as("seed %d", seed).isEqualTo(tree);
        }
    }

    private static Written tree(SplittableRandom random, int depth) {
        int kind = depth == 0 ? 0 : random.nextInt(4);
        if (kind < 2) {
            return new Written.Text(text(random));
        }
        List<Written> items = new ArrayList<>();
        List<Entry> entries = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            items.add(tree(random, depth - 1));
            entries.add(new Entry(i + text(random), tree(random, depth - 1)));
        }
        return kind == 2 ? new Written.Group(Spot.NOWHERE, entries) : new Written.Sequence(Spot.NOWHERE, items);
    }

    private static String text(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            text.append(ODD.charAt(random.nextInt(ODD.length())));
        }
        return text.toString();
    }
}
