package pitchboard.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.brief.Fasteners;
import pitchboard.brief.FootPad;
import pitchboard.brief.Joints;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;

/** What a job says of what holds it together. */
final class JointsFormTest {
    private static String with(String lines) {
        return JobJson.with("\"steps\":", lines + ", \"steps\":");
    }

    private static Joints read(String joints) {
        return JobJson.understood(with("\"joints\": " + joints)).brief().joints();
    }

    @Test
    void nothing_said_is_nothing() {
        assertThat(JobJson.understood(JobJson.WHOLE).brief().joints()).isEqualTo(Joints.UNSAID);
        assertThat(JobJson.understood(JobJson.WHOLE).brief().support()).isEmpty();
    }

    @Test
    void fasteners_are_known_by_their_sizes_or_by_what_they_hold() {
        Joints joints = read("""
                {"head board": {"kind": "lag screws", "number": 4, "diameter": "3/8\\"", "length": "5\\""},
                 "treads": {"kind": "wood screws", "number": 2, "gauge": 10, "length": 3},
                 "foot": {"kind": "rated", "number": 1, "allowed": "250 lb"}, "hanger": "2.5 kN",
                 "pad": {"length": "4'", "width": "3'", "thickness": 6, "soil": "gravel"}}""");
        assertThat(joints.headBoard())
                .contains(new Fasteners.Sized(
                        Fasteners.Kind.LAG_SCREW,
                        Optional.of(Length.inches(0, 3, 8)),
                        Optional.empty(),
                        Length.inches(5),
                        4));
        assertThat(joints.treads())
                .contains(new Fasteners.Sized(
                        Fasteners.Kind.WOOD_SCREW, Optional.empty(), Optional.of(10), Length.inches(3), 2));
        assertThat(joints.foot()).contains(new Fasteners.Rated(new Reckoned(250, Unit.POUND), 1));
        assertThat(joints.hanger()).contains(new Reckoned(2.5, Unit.KILONEWTON));
        assertThat(joints.pad().soil()).contains(FootPad.Soil.GRAVEL);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"head": {"kind": "lag screw", "number": 2}} | joints > head > kind: found `lag screw`, expected `lag screws`
            {"head": {"kind": "nails", "number": 0, "diameter": 0.131, "length": 3}} | joints > head > number: found `0`, expected a whole number from 1 to 40
            {"head": {"kind": "lag screws", "number": 2, "length": 4}} | joints > head > diameter: expected a line such as `diameter: 3/8"` with lag screws
            {"head": {"kind": "wood screws", "number": 2, "diameter": 0.19, "gauge": 10, "length": 3}} | joints > head > diameter: found `0.19`, expected no such line with wood screws
            {"head": {"kind": "rated", "number": 2}} | joints > head > allowed: expected a line such as `allowed: 300 lb` with rated ones
            {"hanger": "0 lb"} | joints > hanger: found `0 lb`, expected a load above zero with its unit, such as 300 lb or 2 kN
            {"hold-down": "-1800 lb"} | joints > hold-down: found `-1800 lb`, expected a load above zero with its unit, such as 300 lb or 2 kN
            {"pad": {"length": "4'"}} | joints > pad > width: expected a line such as `width: 4'` beside the other sizes of the pad; joints > pad > thickness: expected a line such as `thickness: 4"` beside the other sizes of the pad
            {"pad": {"soil": "mud"}} | joints > pad > soil: found `mud`, expected clay or silt, sand, gravel, sedimentary rock or crystalline rock
            """)
    void what_makes_no_sense_is_refused_with_what_would(String joints, String problem) {
        List<String> problems = JobJson.problems(with("\"joints\": " + joints)).stream()
                .map(words -> words.replaceAll("^line \\d+, column \\d+: wanted > ", ""))
                .toList();
        assertThat(String.join("; ", problems)).isEqualTo(problem);
    }
}
