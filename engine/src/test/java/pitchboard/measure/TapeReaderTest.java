package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.measure.Tape.Units;
import pitchboard.measure.TapeReading.Read;
import pitchboard.measure.TapeReading.Unread;

final class TapeReaderTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # text              | whole inches and sixty-fourths
            8' 9 3/4"           | 105 | 48
            8'-9 3/4"           | 105 | 48
            8'9-3/4"            | 105 | 48
            8' - 9 3/4"         | 105 | 48
            8' 9 3/4            | 105 | 48
            8'-9                | 105 | 0
            105-3/4             | 105 | 48
            105 3/4             | 105 | 48
            105 3/4"            | 105 | 48
            105 3 / 4 in        | 105 | 48
            105.75 in           | 105 | 48
            105.75              | 105 | 48
            8ft 9-3/4in         | 105 | 48
            8 ft 9.75 in        | 105 | 48
            8 FT. 9 IN.         | 105 | 0
            8 Feet 9 Inches     | 105 | 0
            1 foot 1 inch       | 13  | 0
            8ft9in              | 105 | 0
            8'                  | 96  | 0
            8 1/2'              | 102 | 0
            8.5 ft              | 102 | 0
            8'-3/4"             | 96  | 48
            8' 0"               | 96  | 0
            10'-0"              | 120 | 0
            0                   | 0   | 0
            0"                  | 0   | 0
            9 0/16              | 9   | 0
            3/4                 | 0   | 48
            63/64"              | 0   | 63
            0.5"                | 0   | 32
            .5"                 | 0   | 32
            9''                 | 9   | 0
            8'9''               | 105 | 0
            007 1/2             | 7   | 32
            """)
    void inches_are_read_from_any_way_of_writing_them(String text, long whole, long sixtyFourths) {
        assertThat(TapeReader.read(text, Units.INCHES)).isEqualTo(inches(whole, sixtyFourths));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "8′-9 3⁄4″",
                "8′ 9¾″",
                "8’ 9 ¾”",
                "8‘ 9¾“",
                "8ʹ 9¾ʺ",
                "8´ 9¾´´",
                "8’ 9¾’’",
                "8'\u20139\u00a03/4\"",
                "8'\u20149\u20093∕4\"",
                "8'\u22129\u202f3/4\"",
                "8\u2009ft 9\u20113/4 in",
                "\t8'9\u00be\" "
            })
    void marks_dashes_spaces_and_fractions_may_come_from_any_keyboard(String text) {
        assertThat(TapeReader.read(text, Units.INCHES)).isEqualTo(inches(105, 48));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2686 mm         | 26860
            2686mm          | 26860
            2686 MM         | 26860
            2686.5 mm       | 26865
            2.686 m         | 26860
            268.6 cm        | 26860
            1 metre         | 10000
            2 meters        | 20000
            2686            | 26860
            2686.5          | 26865
            .5              | 5
            """)
    void metric_lengths_are_read_with_a_unit_and_in_a_metric_job_without(String text, long tenthsOfAMillimetre) {
        assertThat(TapeReader.read(text, Units.MILLIMETRES))
                .isEqualTo(new Read(Length.mm(Ratio.of(tenthsOfAMillimetre, 10))));
    }

    @Test
    void a_unit_that_is_written_counts_in_every_job() {
        assertThat(TapeReader.read("8' 9 3/4", Units.MILLIMETRES)).isEqualTo(inches(105, 48));
        assertThat(TapeReader.read("2686 mm", Units.INCHES)).isEqualTo(new Read(Length.mm(2686)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # fractions
            3/0         | 1 | 3/0     | 2, 4, 8, 16, 32 or 64 below the stroke: nothing is divided into no parts
            9 17/16     | 3 | 17/16   | a fraction of less than one (write 10 1/16)
            9 16/16     | 3 | 16/16   | a fraction of less than one (write 10)
            93/4        | 1 | 93/4    | a fraction of less than one (write 23 1/4, or put a space after the whole number)
            3/7         | 1 | 3/7     | halves, quarters, eighths and so on down to sixty-fourths, as on a tape (the nearest is 27/64)
            9 1/3"      | 3 | 1/3     | halves, quarters, eighths and so on down to sixty-fourths, as on a tape (the nearest is 21/64)
            9⅔          | 2 | ⅔       | halves, quarters, eighths and so on down to sixty-fourths, as on a tape (the nearest is 43/64)
            1/128       | 1 | 1/128   | halves, quarters, eighths and so on down to sixty-fourths, as on a tape (the nearest is 1/64)
            1/2/4       | 4 | /       | one stroke in a fraction
            ½/4         | 2 | /       | one stroke in a fraction
            3/          | 3 | ``      | the lower number of the fraction
            3/in        | 3 | in      | the lower number of the fraction
            /4          | 1 | /       | a number above the stroke
            1.5/2       | 1 | 1.5     | whole numbers above and below the stroke
            1/2.5       | 3 | 2.5     | whole numbers above and below the stroke
            9.5 3/4     | 5 | 3       | either decimals or a fraction, not both
            9 - 3/4     | 3 | -       | a space, or a dash with no space beside it: with spaces it could mean less
            9 3/4 1/2   | 7 | 1       | a foot mark between two numbers, as in 8' 9 3/4"
            # decimals
            7..5        | 3 | .       | one decimal point in a number
            1.2.3       | 4 | .       | one decimal point in a number
            5.          | 2 | .       | a digit after the point
            2,686 mm    | 2 | ,       | a point before decimals, and nothing between thousands: a comma can mean either
            8' 9,75"    | 5 | ,       | a point before decimals, and nothing between thousands: a comma can mean either
            # feet and inches
            8' 14"      | 4 | 14"     | less than 12 inches after the feet (write 9'-2")
            8' 12       | 4 | 12      | less than 12 inches after the feet (write 9'-0")
            8' 14.7"    | 4 | 14.7"   | less than 12 inches after the feet (write 110.7 in)
            5" 8'       | 4 | 8'      | feet before inches (write 8'-5")
            5" 3"       | 4 | 3"      | nothing after the inches
            5" x        | 4 | x       | nothing after the inches
            8' 9" 3     | 7 | 3       | nothing after the inches
            8' 9'       | 4 | 9'      | inches after the feet, or nothing
            8' mm       | 4 | mm      | inches after the feet, or nothing
            8' 30 mm    | 4 | 30 mm   | inches after the feet: a length is written in one system
            8.5' 3"     | 1 | 8.5'    | whole feet before inches
            8'-         | 4 | ``      | inches after the dash
            8-9         | 2 | -       | a fraction after the dash, or a foot mark before it
            8 9         | 3 | 9       | a foot mark between two numbers, as in 8' 9 3/4"
            # units
            3 m 20 cm   | 5 | 20      | nothing after the unit: a metric length is written with one unit
            1/2 mm      | 1 | 1/2 mm  | decimals, as metric tapes have no fractions (write 0.5)
            12 abc      | 4 | abc     | a unit: ft, in, mm, cm or m
            12 °        | 4 | °       | a unit: ft, in, mm, cm or m
            '           | 1 | '       | a number before the unit
            mm          | 1 | mm      | a number before the unit
            # no length at all
            abc         | 1 | abc     | a length such as 8' 9 3/4", 105.75 in or 2686 mm
            ``          | 1 | ``      | a length such as 8' 9 3/4", 105.75 in or 2686 mm
            `  `        | 3 | ``      | a length such as 8' 9 3/4", 105.75 in or 2686 mm
            😀 3        | 1 | 😀      | a length such as 8' 9 3/4", 105.75 in or 2686 mm
            -3/8        | 1 | -       | a length without a sign: it is never less than nothing
            1234567890  | 1 | 1234567890 | at most 9 digits on each side of the point
            """)
    void what_is_no_length_is_refused_with_its_place_and_a_remedy(
            String text, int column, String found, String expected) {
        assertThat(TapeReader.read(text, Units.INCHES)).isEqualTo(new Unread(column, found, expected));
    }

    @Test
    void a_fraction_in_a_metric_job_asks_for_its_unit() {
        assertThat(TapeReader.read("105 3/4", Units.MILLIMETRES))
                .isEqualTo(new Unread(1, "105 3/4", "a unit after a fraction (write 105 3/4 in)"));
    }

    @Test
    void a_text_that_is_too_long_is_refused_where_it_gets_too_long() {
        assertThat(TapeReader.read("1".repeat(60_000), Units.INCHES))
                .isEqualTo(new Unread(61, "1", "at most 60 characters"));
    }

    @Test
    void the_longest_numbers_do_not_overflow() {
        assertThat(TapeReader.read("999999999.999999999 m", Units.INCHES).findLength())
                .map(Length::inMm)
                .contains(Ratio.of(999_999_999_999_999_999L, 1_000_000));
    }

    @Test
    void a_signed_length_is_read_where_the_caller_asks_for_one() {
        assertThat(TapeReader.readSigned("-3/8\"", Units.INCHES)).isEqualTo(new Read(Length.inches(0, -3, 8)));
        assertThat(TapeReader.readSigned("−1′-2″", Units.INCHES)).isEqualTo(new Read(Length.inches(-14)));
        assertThat(TapeReader.readSigned("14\"", Units.INCHES)).isEqualTo(new Read(Length.inches(14)));
        assertThat(TapeReader.readSigned("--1", Units.INCHES).findLength()).isEmpty();
    }

    @Test
    void a_reading_is_one_of_two_things() {
        TapeReading good = TapeReader.read("9", Units.INCHES);
        TapeReading bad = TapeReader.read("", Units.INCHES);
        String ofGood = good.match(read -> "good", unread -> "bad");
        String ofBad = bad.match(read -> "good", unread -> "bad");
        assertThat(List.of(ofGood, ofBad)).containsExactly("good", "bad");
        assertThat(good.findLength()).contains(Length.inches(9));
        assertThat(bad.findLength()).isEmpty();
    }

    @Test
    void a_refusal_reads_as_one_sentence() {
        assertThat(new Unread(3, "17/16", "a fraction of less than one (write 10 1/16)").sentence())
                .isEqualTo("column 3: expected a fraction of less than one (write 10 1/16) but found 17/16");
        assertThat(new Unread(4, "", "inches after the dash").sentence())
                .isEqualTo("column 4: expected inches after the dash but found nothing");
    }

    private static TapeReading inches(long whole, long sixtyFourths) {
        return new Read(Length.inches(whole, sixtyFourths, 64));
    }
}
