package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.measure.Tape.Style;
import pitchboard.measure.Tape.Units;
import pitchboard.measure.TapeReading.Read;

/** Reading back what was written gives the same length. */
final class TapeRoundTripLawsTest {
    private static final int DRAWS = 2_000;
    private static final String VULGAR = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚⅐⅑⅒↉";

    @ParameterizedTest
    @EnumSource
    void feet_and_inches_come_back(Style style) {
        Draws.times(DRAWS, 61, draws -> {
            Graduation graduation = draws.oneOf(inchGraduations());
            Length length = draws.onTape(graduation);
            String text = TapeWriter.feetAndInches(length, graduation, style);
            assertThat(TapeReader.read(text, Units.MILLIMETRES)).as(text).isEqualTo(new Read(length));
        });
    }

    @ParameterizedTest
    @EnumSource
    void inches_alone_come_back(Style style) {
        Draws.times(DRAWS, 62, draws -> {
            Graduation graduation = draws.oneOf(inchGraduations());
            Length length = draws.onTape(graduation);
            String text = TapeWriter.inches(length, graduation, style);
            assertThat(TapeReader.read(text, Units.MILLIMETRES)).as(text).isEqualTo(new Read(length));
        });
    }

    @ParameterizedTest
    @EnumSource
    void decimal_inches_come_back_since_six_places_hold_a_sixty_fourth(Style style) {
        Draws.times(DRAWS, 63, draws -> {
            Length length = draws.onTape(Graduation.SIXTY_FOURTH_INCH);
            String text = TapeWriter.decimalInches(length, 6, style);
            assertThat(TapeReader.read(text, Units.MILLIMETRES)).as(text).isEqualTo(new Read(length));
        });
    }

    @ParameterizedTest
    @EnumSource
    void millimetres_and_metres_come_back(Style style) {
        Draws.times(DRAWS, 64, draws -> {
            Length length = draws.onTape(Graduation.TENTH_MILLIMETRE);
            String mm = TapeWriter.mm(length, 1, style);
            String metres = TapeWriter.metres(length, 4, style);
            assertThat(TapeReader.read(mm, Units.INCHES)).as(mm).isEqualTo(new Read(length));
            assertThat(TapeReader.read(metres, Units.INCHES)).as(metres).isEqualTo(new Read(length));
        });
    }

    @ParameterizedTest
    @EnumSource
    void what_any_tape_shows_comes_back_with_its_sign(Style style) {
        Draws.times(DRAWS, 65, draws -> {
            Graduation graduation = draws.oneOf(List.of(Graduation.values()));
            Units units = graduation.isOfTheInch() ? Units.INCHES : Units.MILLIMETRES;
            Tape tape = new Tape(units, graduation);
            Length length = draws.oneOf(
                    List.of(draws.onTape(graduation), draws.onTape(graduation).negated()));
            assertThat(List.of(
                            TapeReader.readSigned(TapeWriter.write(length, tape, style), units),
                            TapeReader.readSigned(TapeWriter.writeRunning(length, tape, style), units)))
                    .containsOnly(new Read(length));
        });
    }

    @Test
    void a_length_between_two_lines_comes_back_as_the_nearest_line() {
        Draws.times(DRAWS, 66, draws -> {
            Graduation graduation = draws.oneOf(inchGraduations());
            Length exact = draws.pitch().alongForLevel(draws.jobLength());
            String text = TapeWriter.feetAndInches(exact, graduation, Style.PLAIN);
            assertThat(TapeReader.readSigned(text, Units.INCHES))
                    .as(text)
                    .isEqualTo(new Read(exact.rounded(graduation)));
        });
    }

    /** Against the character database, which spells every vulgar fraction out. */
    @Test
    void every_vulgar_fraction_is_read_as_it_is_spelled_out() {
        for (int i = 0; i < VULGAR.length(); i++) {
            String vulgar = VULGAR.substring(i, i + 1);
            String spelled = Normalizer.normalize(vulgar, Normalizer.Form.NFKD);
            TapeReading expected = TapeReader.read("8' 9 " + spelled + "\"", Units.INCHES);
            TapeReading read = TapeReader.read("8' 9" + vulgar + "\"", Units.INCHES);
            assertThat(read.findLength()).as(vulgar).isEqualTo(expected.findLength());
            assertThat(TapeReader.read("8'-9 " + vulgar, Units.INCHES).findLength())
                    .as(vulgar)
                    .isEqualTo(expected.findLength());
            assertThat(read.findLength().isPresent()).as(vulgar).isEqualTo("½¼¾⅛⅜⅝⅞".contains(vulgar));
        }
    }

    private static List<Graduation> inchGraduations() {
        return List.of(Graduation.values()).stream()
                .filter(Graduation::isOfTheInch)
                .toList();
    }
}
