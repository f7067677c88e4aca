package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Tape.Style;
import pitchboard.measure.Tape.Units;

/** Printed stairs, recomputed exactly; where a book rounded or slipped, our value stands beside the printed one. */
final class MarksWorkedExamplesTest {
    /**
     * NAVEDTRA 14044, Builder 3 & 2, Volume 2, chapter 6, Stairway Layout: 8'-11" climbed in 15 risers. The marks are our
     * own, worked by hand: i times 107/15, each rounded once.
     */
    @Test
    void fifteen_risers_in_a_hundred_and_seven_inches_are_marked_from_one_end() {
        Length total = inches("8'-11\"");
        List<String> marks = IntStream.rangeClosed(1, 15)
                .mapToObj(i -> total.times(i).dividedBy(15))
                .map(exact -> Marked.of(exact, Graduation.SIXTEENTH_INCH).line())
                .map(line -> TapeWriter.inches(line, Graduation.SIXTEENTH_INCH, Style.PLAIN))
                .toList();
        assertThat(String.join(", ", marks).replace("\"", "")).isEqualTo("""
                7 1/8, 14 1/4, 21 3/8, 28 9/16, 35 11/16, 42 13/16, 49 15/16, 57 1/16, 64 3/16, 71 5/16, 78 7/16, \
                85 5/8, 92 3/4, 99 7/8, 107""");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # total rise | risers | exact rise  | rise as printed | what stepping the printed rise off leaves over
            # NAVEDTRA 14044, Builder 3 & 2, Volume 2, chapter 6; the printed rise is from memory
            8'-11"       | 15     | 7 2/15 in   | 7 1/8"          | -1/8 in
            # US Army Engineer subcourse EN5156, pp. 2-27 to 2-29, fig. 2-38
            7'-10"       | 13     | 7 3/13 in   | 7 1/4"          | 1/4 in
            # How to Build Ramps for Home Accessibility, Minnesota, p. 57, long-tread steps
            30"          | 8      | 3 3/4 in    | 3 3/4"          | 0 in
            # USDA Agriculture Handbook 73, Wood-Frame House Construction, Stairs, main stair; from memory
            8'-10 3/4"   | 14     | 7 5/8 in    | 7 5/8"          | 0 in
            # Building Construction, part 3-2, dog-legged stair, fig. 201; title from memory
            10'-10"      | 20     | 6 1/2 in    | 6 1/2"          | 0 in
            """)
    void a_rise_in_inches_stands_beside_the_printed_one(
            String total, int risers, String exact, String printed, String left) {
        Length rise = inches(total).dividedBy(risers);
        assertThat(ExactText.write(rise, Units.INCHES)).isEqualTo(exact);
        assertThat(ExactText.write(inches(printed).times(risers).minus(inches(total)), Units.INCHES))
                .isEqualTo(left);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # total rise | risers | exact rise  | rise as printed | what stepping the printed rise off leaves over
            # Canadian Wood-Frame House Construction, CMHC, Stairway design, near fig. 141: printed as 181
            2718 mm      | 15     | 181.2 mm    | 181.2 mm        | 0 mm
            # the same, alternative: 192 is a misprint, the 7.64 in beside it is right
            2718 mm      | 14     | 194 1/7 mm  | 192 mm          | -30 mm
            # Basic Carpentry Techniques, open text, Stairs, fig. 44A
            2100 mm      | 12     | 175 mm      | 175 mm          | 0 mm
            # TAFE NSW carpentry teaching slides, Carp 18: 171.43 printed as 171
            2400 mm      | 14     | 171 3/7 mm  | 171 mm          | -6 mm
            # the same slides, five risers
            850 mm       | 5      | 170 mm      | 170 mm          | 0 mm
            """)
    void a_rise_in_millimetres_stands_beside_the_printed_one(
            String total, int risers, String exact, String printed, String left) {
        Length rise = mm(total).dividedBy(risers);
        assertThat(ExactText.write(rise, Units.MILLIMETRES)).isEqualTo(exact);
        assertThat(ExactText.write(mm(printed).times(risers).minus(mm(total)), Units.MILLIMETRES))
                .isEqualTo(left);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # terms, added up                         | printed sum
            # C. A. King, Inside Finishing, 1912, arts. 45-46: room, plaster, joist, floor
            8'-0" ; 3/4" ; 8" ; 7/8"                  | 8'-9 5/8"
            # Treatise on Architecture and Building Construction, vol. 3, 1899, sec. 11 p. 25, fig. 20: width of the well
            2'-9" ; 6" ; 1" ; 1"                      | 3'-5"
            # the same: stair winding at both ends, between walls
            2'-10" ; 8" ; 2'-10"                      | 6'-4"
            # Building Construction, part 3-2, fig. 201, title from memory: flight and half landing
            7'-6" ; 3'-6"                             | 11'-0"
            # Radford's Cyclopedia of Construction, vol. 3, Stair Building Simplified, fig. 71: headroom and two risers
            7'-10" ; 7 1/4" ; 7 1/4"                  | 9'-0 1/2"
            """)
    void what_books_add_up_in_feet_and_inches_adds_up(String terms, String sum) {
        Length total = Length.ZERO;
        for (String term : terms.split(";", -1)) {
            total = total.plus(inches(term));
        }
        assertThat(TapeWriter.feetAndInches(total, Graduation.SIXTEENTH_INCH, Style.PLAIN))
                .isEqualTo(sum);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # total run | treads | run
            # US Army Engineer subcourse EN5156, pp. 2-27 to 2-29
            10'-6"      | 12     | 10 1/2"
            # Radford's Cyclopedia of Construction, vol. 3, Stair Building Simplified, fig. 71
            12'-8"      | 16     | 9 1/2"
            # Treatise on Architecture and Building Construction, vol. 3, 1899, sec. 11 p. 25, fig. 20 (a copy prints 8)
            9'-9"       | 13     | 9"
            # How to Build Ramps for Home Accessibility, Minnesota, p. 57
            19'-10"     | 7      | 34"
            """)
    void a_total_run_divides_into_its_treads(String totalRun, int treads, String run) {
        Length exact = inches(totalRun).dividedBy(treads);
        assertThat(exact).isEqualTo(inches(run));
        assertThat(TapeWriter.inches(exact, Graduation.SIXTEENTH_INCH, Style.PLAIN))
                .isEqualTo(run);
    }

    /** IBE, Stairmaking, trainees' handbook: a landing at 1410, 24 of finish on it, 40 of finish below. */
    @Test
    void the_height_of_a_flight_is_finish_to_finish() {
        Length height = mm("1410").plus(mm("24")).minus(mm("40"));
        assertThat(TapeWriter.mm(height, 0, Style.PLAIN)).isEqualTo("1394 mm");
    }

    /** US Army Engineer subcourse EN5156, pp. 2-27 to 2-29: 7 1/4 on 10 1/2 against its three rules. */
    @Test
    void the_step_rules_of_a_printed_stair_recompute() {
        Length rise = inches("7 1/4");
        Length run = inches("10 1/2");
        assertThat(Decimals.fixed(rise.times(2).plus(run).inInches(), 1)).isEqualTo("25.0");
        assertThat(Decimals.fixed(rise.plus(run).inInches(), 2)).isEqualTo("17.75");
        assertThat(Decimals.fixed(Area.of(rise, run).squareInches(), 1)).isEqualTo("76.1");
    }

    /**
     * Worked with a calculator: step √(R² + T²), pitch atan(R/T), notch R·T/√(R² + T²), and what is left of a board of
     * 11 1/4 in and of 9 1/4 in. The row 7 1/2 on 10 is a 3-4-5 and exact.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            7     | 10     | 12.2066 | 34.99 | 5.735 | 5.515 | 3.515
            7     | 11     | 13.0384 | 32.47 | 5.906 | 5.344 | 3.344
            7 1/8 | 10 3/8 | 12.5860 | 34.48 | 5.873 | 5.377 | 3.377
            7 1/4 | 10     | 12.3516 | 35.94 | 5.870 | 5.380 | 3.380
            7 1/4 | 10 1/2 | 12.7598 | 34.62 | 5.966 | 5.284 | 3.284
            7 1/2 | 10     | 12.5000 | 36.87 | 6.000 | 5.250 | 3.250
            7 1/2 | 11     | 13.3135 | 34.29 | 6.197 | 5.053 | 3.053
            7 3/4 | 10     | 12.6516 | 37.78 | 6.126 | 5.124 | 3.124
            """)
    void step_pitch_notch_and_throat_agree_with_a_calculator(
            String rise, String run, String step, String degrees, String notch, String deep, String shallow) {
        Pitch pitch = Pitch.of(inches(rise), inches(run));
        Length cut = pitch.cosTimes(inches(rise));
        assertThat(decimal(pitch.alongForLevel(inches(run)), 4)).isEqualTo(step);
        assertThat(Decimals.fixed(pitch.degrees(), 2)).isEqualTo(degrees);
        assertThat(decimal(cut, 3)).isEqualTo(notch);
        assertThat(decimal(inches("11 1/4").minus(cut), 3)).isEqualTo(deep);
        assertThat(decimal(inches("9 1/4").minus(cut), 3)).isEqualTo(shallow);
    }

    /** TAFE NSW carpentry teaching slides, straight stair: 850 up, 1100 and one more step of 275 along; root our own. */
    @Test
    void the_string_of_a_printed_stair_is_its_diagonal() {
        Length string = Length.diagonal(mm("850"), mm("1100").plus(mm("275")));
        assertThat(TapeWriter.mm(string, 1, Style.PLAIN)).isEqualTo("1616.5 mm");
    }

    private static String decimal(Length length, int places) {
        return TapeWriter.decimalInches(length, places, Style.PLAIN).replace(" in", "");
    }

    private static Length inches(String text) {
        return TapeReader.read(text, Units.INCHES).findLength().orElseThrow();
    }

    private static Length mm(String text) {
        return TapeReader.read(text, Units.MILLIMETRES).findLength().orElseThrow();
    }
}
