package pitchboard.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.intake.JobText;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Jobs held against each other, brought together and rewritten, complete or not. */
final class RevisionAnswersTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # before | after | differences
            {"job": "a"} | {"job": "a"} | []
            {"job": "a"} | {"job": "b"} | [{"field":"job","before":"a","after":"b"}]
            # What cannot be read is compared as it is spelled.
            {"measured": {"rise": "105"}} | {"measured": {"rise": "8' 9"}} | [{"field":"measured > rise","before":"105","after":"8' 9"}]
            {} | {"measured": {"landing above": {"depth": "40", "width": "50"}}} | [{"field":"measured > landing above > depth","before":null,"after":"40"},{"field":"measured > landing above > width","before":null,"after":"50"}]
            {"overhead": [{"what": "a"}, {"what": "b"}]} | {"overhead": [{"what": "a"}]} | [{"field":"overhead > 2 > what","before":"b","after":null}]
            {"risers": "open"} | {"risers": {"kind": "boards"}} | [{"field":"risers","before":"open","after":null},{"field":"risers > kind","before":null,"after":"boards"}]
            """)
    void compares(String before, String after, String differences) {
        assertThat(Answers.to("{\"do\": \"compare\", \"before\": " + before + ", \"after\": " + after + "}"))
                .isEqualTo("{\"differences\":" + differences + "}");
    }

    @ParameterizedTest
    @MethodSource("pitchboard.browser.Requests#exampleFiles")
    void in_other_units_a_job_differs_by_its_units_alone(Path example) {
        Written.Group job = Requests.job(example);
        Tape.Units units = JobText.findUnits(job).orElseThrow();
        Tape.Units others = units == Tape.Units.INCHES ? Tape.Units.MILLIMETRES : Tape.Units.INCHES;
        String converted = Answers.to(
                Requests.request("convert", Requests.entry("job", job), Requests.text("units", name(others))));
        String after = converted.substring("{\"job\":".length(), converted.length() - 1);
        assertThat(Answers.to(
                        "{\"do\": \"compare\", \"before\": " + JsonWriter.write(job) + ", \"after\": " + after + "}"))
                .isEqualTo("{\"differences\":[{\"field\":\"units\",\"before\":\"" + name(units) + "\",\"after\":\""
                        + name(others) + "\"}]}");
    }

    private static String name(Tape.Units units) {
        return units == Tape.Units.INCHES ? "inches" : "millimetres";
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # base | mine | theirs | answer
            {"a": "1", "b": "1"} | {"a": "2", "b": "1"} | {"a": "1", "b": "3"} | {"job":{"a":"2","b":"3"},"conflicts":[],"taken":[{"field":"b","before":"1","after":"3"}]}
            {"a": "1"} | {"a": "2"} | {"a": "3"} | {"job":{"a":"2"},"conflicts":[{"field":"a","base":"1","mine":"2","theirs":"3"}],"taken":[]}
            {"a": {"b": "1"}} | {} | {"a": {"b": "2"}} | {"job":{},"conflicts":[{"field":"a","base":{"b":"1"},"mine":null,"theirs":{"b":"2"}}],"taken":[]}
            # A bare number goes on counting what it counted when it was written.
            {"units": "inches", "paper": "A4", "measured": {"rise": "100"}} | {"units": "millimetres", "paper": "A4", "measured": {"rise": "2540 mm"}} | {"units": "inches", "paper": "A4", "measured": {"rise": "100", "finish to come above": "1"}} | {"job":{"units":"millimetres","paper":"A4","measured":{"rise":"2540 mm","finish to come above":"25.4 mm"}},"conflicts":[],"taken":[{"field":"measured > finish to come above","before":null,"after":"25.4 mm"}]}
            {"units": "inches", "paper": "A4", "measured": {"rise": "100"}} | {"units": "inches", "paper": "A4", "measured": {"rise": "101"}} | {"units": "millimetres", "paper": "A4", "measured": {"rise": "2540"}} | {"job":{"units":"millimetres","paper":"A4","measured":{"rise":"2565.4 mm"}},"conflicts":[],"taken":[]}
            """)
    void merges(String base, String mine, String theirs, String answer) {
        assertThat(Answers.to("{\"do\": \"merge\", \"base\": " + base + ", \"mine\": " + mine + ", \"theirs\": "
                        + theirs + "}"))
                .isEqualTo(answer);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            8' 9 3/4 | inches      | {"inches":"8'-9 3/4\\"","millimetres":"2686.05 mm","mm":2686.05}
            2686     | millimetres | {"inches":"≈ 8'-9 3/4\\"","millimetres":"2686 mm","mm":2686}
            1/64     | inches      | {"inches":"1/64\\"","millimetres":"≈ 0.4 mm","mm":0.396875}
            -6       | inches      | {"inches":"-6\\"","millimetres":"-152.4 mm","mm":-152.4}
            """)
    void says_what_a_length_is(String text, String units, String answer) {
        assertThat(Answers.to("{\"do\": \"length\", \"text\": \"" + text + "\", \"units\": \"" + units + "\"}"))
                .isEqualTo(answer);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {"units": "inches", "paper": "A4", "measured": {"rise": "100"}} | {"job":{"units":"millimetres","paper":"A4","measured":{"rise":"2540 mm"}}}
            {"units": "millimetres", "measured": {"rise": "2540"}} | {"job":{"units":"millimetres","measured":{"rise":"2540 mm"}}}
            {"measured": {"rise": "100"}} | {"problems":[{"in":"job","field":"units","line":1,"column":50,"words":"expected inches or millimetres","missing":true}]}
            """)
    void converts(String job, String answer) {
        assertThat(Answers.to("{\"do\": \"convert\", \"units\": \"millimetres\", \"job\": " + job + "}"))
                .isEqualTo(answer);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            {"job": "a: b", "measured": {"rise": "8' 9", "overhead": []}} | job: \\"a: b\\"\\u000ameasured:\\u000a  rise: 8' 9\\u000a  overhead: []\\u000a
            """)
    void writes(String job, String yaml) {
        assertThat(Answers.to("{\"do\": \"write\", \"job\": " + job + "}")).isEqualTo("{\"yaml\":\"" + yaml + "\"}");
    }
}
