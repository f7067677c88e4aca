package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pitchboard.measure.Tape.Units;
import pitchboard.measure.TapeReading.Read;
import pitchboard.measure.TapeReading.Unread;

/** Whatever is typed, the reader answers; and its answer can be used. */
final class TapeReaderLawsTest {
    private static final int DRAWS = 50_000;
    private static final Pattern REMEDY = Pattern.compile("\\(write ([^,)]*)[,)]");

    private static final List<String> PIECES = pieces();

    @Test
    void every_text_is_read_or_refused_and_never_throws() {
        List<TapeReading> readings = readings();
        long read = readings.stream().filter(Read.class::isInstance).count();
        // Both kinds come up often enough for the other laws to mean something.
        assertThat(read).isBetween(DRAWS / 20L, DRAWS / 2L);
        assertThat(readings).hasSize(DRAWS);
    }

    @Test
    void a_refusal_points_at_what_it_found() {
        Draws.times(DRAWS, 51, draws -> {
            String text = draws.text(PIECES, 6);
            if (TapeReader.readSigned(text, Units.INCHES) instanceof Unread unread) {
                assertThat(unread.column()).as(text).isBetween(1, text.length() + 1);
                assertThat(text.substring(unread.column() - 1)).as(text).startsWith(unread.found());
                assertThat(unread.expected()).as(text).isNotBlank();
            }
        });
    }

    @Test
    void every_remedy_can_itself_be_read() {
        List<String> unreadableRemedies = readings().stream()
                .filter(Unread.class::isInstance)
                .map(reading -> REMEDY.matcher(((Unread) reading).expected()))
                .filter(Matcher::find)
                .map(matcher -> matcher.group(1))
                .filter(remedy ->
                        TapeReader.read(remedy, Units.INCHES).findLength().isEmpty())
                .toList();
        assertThat(unreadableRemedies).isEmpty();
    }

    @Test
    void no_text_without_a_sign_is_less_than_nothing() {
        assertThat(readings().stream().flatMap(reading -> reading.findLength().stream()))
                .noneMatch(Length::isNegative);
    }

    private static List<TapeReading> readings() {
        List<TapeReading> readings = new ArrayList<>();
        Draws.times(DRAWS, 52, draws -> {
            Units bare = draws.oneOf(List.of(Units.values()));
            readings.add(TapeReader.read(draws.text(PIECES, 6), bare));
        });
        return readings;
    }

    /** What stands on tapes and keyboards, with whole numbers and fractions often enough to make lengths of. */
    private static List<String> pieces() {
        List<String> pieces = new ArrayList<>(List.of(
                "8",
                "9",
                "12",
                "0",
                "105",
                "3/4",
                "17/16",
                "3/7",
                "1/0",
                "2686",
                " ",
                " ",
                "'",
                "\"",
                "-",
                ".",
                ",",
                "/",
                "ft",
                "in",
                "mm",
                "cm",
                "m",
                "feet",
                "inch",
                "FT.",
                "In.",
                "\u00a0",
                "\u2009",
                "\u2013",
                "\u2212",
                "\u2032",
                "\u2033",
                "\u2019",
                "\u201d",
                "\u2044",
                "½",
                "⅜",
                "⅓",
                "↉",
                "²",
                "x",
                "é",
                "\ud83d\ude00",
                "\ud83d",
                "\n",
                "\u0000",
                "+",
                "99999",
                "9999999999"));
        pieces.addAll(List.of("8'", "9\"", " 3/4\"", "8' ", "9 3/4", "10 mm", "2.5 m"));
        return List.copyOf(pieces);
    }
}
