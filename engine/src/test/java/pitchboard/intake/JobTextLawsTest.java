package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever is done to a text, there is an answer and never a fault. */
final class JobTextLawsTest {
    private static final int DAMAGED = 3000;

    @Test
    void damage_is_told_and_never_breaks_the_reader() {
        for (int seed = 0; seed < DAMAGED; seed++) {
            String json = damaged(new SplittableRandom(seed));
            try {
                JobText text = JobText.ofJson(json, List.of("IRC 2021"));
                if (text instanceof JobText.NotUnderstood unread) {
                    assertThat(unread.problems()).isNotEmpty().allSatisfy(problem -> {
                        assertThat(problem.line()).isPositive();
                        assertThat(problem.column()).isPositive();
                        assertThat(problem.expected()).isNotBlank();
                    });
                }
            } catch (RuntimeException broken) {
                throw new AssertionError("seed " + seed + ":\n" + json, broken);
            }
        }
    }

    private static String damaged(SplittableRandom random) {
        StringBuilder json = new StringBuilder(JobJson.WHOLE);
        for (int i = random.nextInt(1, 6); i > 0; i--) {
            int from = random.nextInt(json.length());
            int to = Math.min(json.length(), from + random.nextInt(12));
            switch (random.nextInt(4)) {
                case 0 -> json.delete(from, to);
                case 1 -> json.insert(from, "{}[]\",:0-/'\u00e9\ud83d\u0000 n".charAt(random.nextInt(16)));
                case 2 -> json.insert(from, json.substring(from, to));
                default -> json.setCharAt(from, (char) random.nextInt(32, 127));
            }
        }
        return json.toString();
    }

    /** Values go wrong more often than brackets. */
    @Test
    void any_value_in_any_place_is_read_or_refused() {
        List<String> values = List.of(
                "0",
                "-1",
                "1e9",
                "true",
                "\"\"",
                "\"none\"",
                "\"free\"",
                "\"nothing\"",
                "[]",
                "{}",
                "[1, 2, 3]",
                "{\"kind\": \"open\"}",
                "\"8' 9 3/4\\\"\"",
                "\"999999999 ft\"",
                "\"1 in 60\"",
                "\"level\"",
                "[[[[]]]]",
                "\"\\u0001\"",
                "\"x\"");
        String[] lines = JobJson.WHOLE.split("\n", -1);
        for (int line = 1; line < lines.length - 2; line++) {
            int colon = lines[line].indexOf(": ");
            boolean whole = colon > 0 && !lines[line].endsWith("{") && !lines[line].endsWith("[");
            for (String value : whole ? values : List.<String>of()) {
                String[] changed = lines.clone();
                boolean last = !lines[line].endsWith(",");
                changed[line] = lines[line].substring(0, colon + 2) + value + (last ? "" : ",");
                assertThat(JobText.ofJson(String.join("\n", changed), List.of()))
                        .isNotNull();
            }
        }
    }
}
