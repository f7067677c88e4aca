package pitchboard.rules.kinds.rails;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.Rebuilt;
import pitchboard.StairFixtures;
import pitchboard.brief.Handrail;
import pitchboard.brief.Handrail.Grip;
import pitchboard.measure.Length;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.Books;
import pitchboard.stair.Stair;

/** A rail whose finger recesses are described, against IRC 2021 R311.7.8.5. */
final class FingerRecessTest {
    private static Stair stair(String start, String depth, String height, String topWidth, String edge) {
        Grip.Recess recess = new Grip.Recess(Read.inches(start), Read.inches(depth), Read.inches(height));
        Grip.Rectangle sides = new Grip.Rectangle(Length.inches(2, 1, 2), Length.inches(2, 1, 4));
        Grip grip = new Grip.Recessed(sides, recess, Read.inches(topWidth), Read.inches(edge));
        Stair plain = StairFixtures.stair("");
        Handrail rail = Rebuilt.with(plain.brief().handrail(), "grip", Optional.of(grip));
        return new Stair(plain.site(), Rebuilt.with(plain.brief(), "handrail", rail), plain.flight());
    }

    private static Verdict judge(String id, Stair stair) {
        return Books.all().get(1).entries().stream()
                .map(entry -> entry.rule())
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .map((Rule rule) -> rule.judge(stair))
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # R311.7.8.5: within 3/4 in of the top, 5/16 in deep, kept over 3/8 in, 1 1/4 to 2 3/4 in wide above, edges 0.01 in
            recess-start-at-most      | 3/4 | 5/16  | 3/8   | 1 1/4   | 1/64
            recess-depth-at-least     | 3/4 | 5/16  | 3/8   | 1 1/4   | 1/64
            recess-height-at-least    | 3/4 | 5/16  | 3/8   | 1 1/4   | 1/64
            recess-top-width-at-least | 3/4 | 5/16  | 3/8   | 1 1/4   | 1/64
            recess-top-width-at-most  | 3/4 | 5/16  | 3/8   | 2 3/4   | 1/64
            rail-edge-radius-at-least | 3/4 | 5/16  | 3/8   | 1 1/4   | 1/64
            """)
    void a_rail_at_every_limit_passes(
            String id, String start, String depth, String height, String topWidth, String edge) {
        assertThat(judge(id, stair(start, depth, height, topWidth, edge))).isInstanceOf(Verdict.Pass.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # the same, one line of the tape beyond
            recess-start-at-most      | 49/64
            recess-depth-at-least     | 19/64
            recess-height-at-least    | 23/64
            recess-top-width-at-least | 1 15/64
            recess-top-width-at-most  | 2 49/64
            rail-edge-radius-at-least | 0.009
            """)
    void a_rail_beyond_a_limit_fails_with_a_remedy(String id, String wrong) {
        Stair stair = switch (id) {
            case "recess-start-at-most" -> stair(wrong, "5/16", "3/8", "2", "1/8");
            case "recess-depth-at-least" -> stair("3/4", wrong, "3/8", "2", "1/8");
            case "recess-height-at-least" -> stair("3/4", "5/16", wrong, "2", "1/8");
            case "rail-edge-radius-at-least" -> stair("3/4", "5/16", "3/8", "2", wrong);
            default -> stair("3/4", "5/16", "3/8", wrong, "1/8");
        };
        Verdict verdict = judge(id, stair);
        assertThat(verdict).isInstanceOf(Verdict.Fail.class);
        assertThat(((Verdict.Fail) verdict).remedy().toString()).containsPattern("\\d");
    }

    @Test
    void what_is_asked_of_rails_without_recesses_does_not_apply() {
        Stair stair = stair("3/4", "5/16", "3/8", "2", "1/8");
        for (String id : List.of("grip-perimeter-at-most", "grip-section-at-most", "round-grip-at-most")) {
            assertThat(judge(id, stair)).isInstanceOf(Verdict.DoesNotApply.class);
        }
        assertThat(judge("grip-perimeter-at-least", stair)).isInstanceOf(Verdict.Pass.class);
    }
}
