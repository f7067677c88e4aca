package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.brief.Strength;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.measure.Tape;

final class StrengthFormTest {
    private static final String USE = "\"width\": 40";

    private static String with(String strength) {
        return JobJson.with(USE, USE + ", \"strength\": " + strength);
    }

    private static Strength read(String strength) {
        return JobJson.understood(with(strength)).brief().strength();
    }

    @Test
    void nothing_said_is_assumed_by_the_tape() {
        assertThat(JobJson.understood(JobJson.WHOLE).brief().strength()).isEqualTo(Strength.assumed(Tape.Units.INCHES));
        assertThat(Strength.assumed(Tape.Units.MILLIMETRES).method()).isEqualTo(Strength.Method.EUROCODE_5);
    }

    @Test
    void all_of_it_can_be_said() {
        Strength strength = read(
                "{\"stringers\": {\"species\": \"hem-fir\", \"grade\": \"no.2\"}, \"header\": {\"species\": \"Redwood\", \"grade\": \"No.1\"}, \"moisture\": \"wet\","
                        + " \"treatment\": \"incised\", \"live load\": \"100 psf\", \"dead load\": \"0.6 kPa\","
                        + " \"point load\": \"1.5 kN\", \"sharing\": \"yes\"}");
        assertThat(strength)
                .isEqualTo(new Strength(
                        Strength.Method.ALLOWABLE_STRESS,
                        Optional.of(new Strength.Wood.Graded("Hem-Fir", "No.2")),
                        Optional.empty(),
                        Optional.of(new Strength.Wood.Graded("Redwood", "No.1")),
                        Optional.empty(),
                        Optional.of(Strength.Service.WET),
                        Optional.of(Strength.Treatment.INCISED),
                        new Strength.Loads(
                                Optional.of(new Reckoned(100, Unit.PSF)),
                                Optional.of(new Reckoned(0.6, Unit.KILONEWTON_PER_M2)),
                                Optional.of(new Reckoned(1.5, Unit.KILONEWTON))),
                        true));
    }

    @Test
    void a_strength_class_may_stand_alone() {
        assertThat(read("{\"method\": \"Eurocode 5\", \"treads\": \"C24\"}").treads())
                .contains(new Strength.Wood.Classed("C24"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"stringers": {"species": "Hem Fir", "grade": "No.2"}} | strength > stringers > species: found `Hem Fir`, expected `Hem-Fir`
            {"stringers": {"species": "Redwood", "grade": "Stud"}} | strength > stringers > grade: found `Stud`, expected a grade of Redwood: Select Structural, No.1, No.2
            {"stringers": {"species": "Redwood"}} | strength > stringers > grade: expected a line such as `grade: Select Structural` with graded wood
            {"stringers": "C24"} | strength > stringers: found `C24`, expected a species and a grade, which allowable stress asks for
            {"method": "Eurocode 5", "stringers": "C25"} | strength > stringers: found `C25`, expected C14, C16, C18, C20, C22, C24, C27, C30, C35, C40, C45, C50, D30 or D40
            {"live load": "0 psf"} | strength > live load: found `0 psf`, expected a load above zero with its unit, such as 40 psf or 2 kN/m2
            {"live load": "-40 psf"} | strength > live load: found `-40 psf`, expected a load above zero with its unit, such as 40 psf or 2 kN/m2
            {"dead load": "10"} | strength > dead load: found `10`, expected a load above zero with its unit, such as 40 psf or 2 kN/m2
            {"point load": "300 psf"} | strength > point load: found `300 psf`, expected a load above zero with its unit, such as 300 lb or 2 kN
            """)
    void what_makes_no_sense_is_refused_with_what_would(String strength, String problem) {
        List<String> problems = JobJson.problems(with(strength)).stream()
                .map(words -> words.replaceAll("^line \\d+, column \\d+: wanted > ", ""))
                .toList();
        assertThat(problems).containsExactly(problem);
    }
}
