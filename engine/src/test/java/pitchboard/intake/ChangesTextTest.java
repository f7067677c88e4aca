package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.rules.Amendment;

/** Local changes to a rulebook, each with who says so. */
final class ChangesTextTest {
    private static final String LIMIT = "8 1/4\\\"";
    private static final String CHANGES = """
            {"based on": "IRC 2021",
             "changes": [
              {"rule": "rise-at-most", "limit": "8 1/4\\"", "said by": "county office"},
              {"rule": "run-at-least", "clause": "R311.7.5.2", "limit": "not enforced", "said by": "county office",
               "since": "2026", "why": "older houses"}]}
            """;

    @Test
    void each_change_says_what_who_since_when_and_why() {
        Amendment rise = new Amendment(
                "rise-at-most", Optional.empty(), Optional.of(Length.inches(8, 1, 4)), "county office", "", "");
        Amendment run = new Amendment(
                "run-at-least", Optional.of("R311.7.5.2"), Optional.empty(), "county office", "2026", "older houses");
        assertThat(understood(CHANGES))
                .isEqualTo(new LocalChanges(
                        "IRC 2021",
                        List.of(
                                new LocalChanges.Change(new Spot(3, 3), rise),
                                new LocalChanges.Change(new Spot(4, 3), run))));
    }

    @Test
    void every_kind_of_limit_can_be_written() {
        assertThat(limit(LIMIT)).isEqualTo(Length.inches(8, 1, 4));
        assertThat(limit("210 mm")).isEqualTo(Length.mm(210));
        assertThat(limit("0 mm")).isEqualTo(Length.ZERO);
        assertThat(limit("42 degrees")).isEqualTo(Angle.degrees(42));
        assertThat(limit("1 in 48")).isEqualTo(Ratio.of(1, 48));
        assertThat(limit("2 %")).isEqualTo(Ratio.of(1, 50));
        assertThat(limit("16")).isEqualTo(new Count(16));
        assertThat(limit("75.5 sq in")).isEqualTo(new Area(Ratio.of(151, 2)));
    }

    /** What a bare number with a point or a fraction counts is known to nobody here. */
    @ParameterizedTest
    @ValueSource(strings = {"8.25", "8 1/4", "8 feet and a bit", "degrees", "x degrees", "-1 sq in", "none", "3 in 1"})
    void a_limit_without_its_unit_is_refused(String limit) {
        assertThat(problems(CHANGES.replace(LIMIT, limit)))
                .containsExactly("line 3, column 38: changes > 1 > limit: found `" + limit + "`, expected not enforced,"
                        + " or a limit with its unit such as 8 1/4\", 210 mm, 42 degrees, 1 in 48 or 75 sq in,"
                        + " or a number of things");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            ", "said by": "county office"}, | "}, | line 3, column 3: changes > 1 > said by: expected a line such as `said by: county building office`
            "said by": "county office"},    | "said by": " "}, | line 3, column 49: changes > 1 > said by: expected something after the colon, as in `said by: county building office`
            "rule": "rise-at-most"          | "ruel": "rise-at-most" | line 3, column 3: changes > 1 > rule: expected a line such as `rule: rise-at-most` ;; line 3, column 5: changes > 1: found `ruel`, expected `rule`
            IRC 2021                        | IRC 2018 | line 1, column 15: based on: found `IRC 2018`, expected `IRC 2021`
            """)
    void what_is_missing_or_mistaken_is_told(String old, String changed, String problems) {
        assertThat(CHANGES).contains(old);
        assertThat(problems(CHANGES.replace(old, changed))).containsExactly(problems.split(" ;; ", -1));
    }

    @Test
    void changes_that_were_written_read_as_the_same_changes() {
        for (String limit : List.of(LIMIT, "75.5 sq in", "42 degrees", "1 in 48", "16", "210.5 mm")) {
            LocalChanges changes = understood(CHANGES.replace(LIMIT, limit));
            String json = JsonWriter.write(new ChangesForm(List.of()).write(changes, Tape.Units.INCHES));
            assertThat(understood(json).amendments()).isEqualTo(changes.amendments());
        }
    }

    private static Quantity limit(String text) {
        return understood(CHANGES.replace(LIMIT, text))
                .amendments()
                .get(0)
                .limit()
                .orElseThrow();
    }

    private static LocalChanges understood(String json) {
        return ChangesText.of(JsonReader.read(json), List.of("IRC 2021"))
                .match(ChangesText.Understood::changes, unread -> {
                    throw new AssertionError(unread.problems());
                });
    }

    private static List<String> problems(String json) {
        return ChangesText.of(JsonReader.read(json), List.of("IRC 2021"))
                .match(
                        read -> List.of(),
                        unread -> unread.problems().stream()
                                .map(Problem::sentence)
                                .toList());
    }
}
