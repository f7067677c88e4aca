package pitchboard.intake.offers;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;

final class OverlayTest {
    private static Written read(String json) {
        return ((Transcript.Legible) JsonReader.read(json.replace('\'', '"'))).written();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # job                          | changes                       | together
            {'a':'1','b':'2'}              | {'b':'3'}                     | {'a':'1','b':'3'}
            {'a':{'x':'1','y':'2'}}        | {'a':{'y':'3'}}               | {'a':{'x':'1','y':'3'}}
            {'a':{'x':'1'}}                | {'a':'open'}                  | {'a':'open'}
            {'a':'open'}                   | {'a':{'x':'1'}}               | {'a':{'x':'1'}}
            {'a':['1','2']}                | {'a':['3']}                   | {'a':['3']}
            {'a':'1'}                      | {'b':{'c':'2'}}               | {'a':'1','b':{'c':'2'}}
            {'a':'1','b':'2'}              | {'a':'left out'}              | {'b':'2'}
            {'a':{'x':'1','y':'2'}}        | {'a':{'x':'left out'}}        | {'a':{'y':'2'}}
            {'a':'1'}                      | {'b':'left out'}              | {'a':'1'}
            {'a':'1'}                      | {}                            | {'a':'1'}
            """)
    void lines_go_before_those_of_the_job(String job, String changes, String together) {
        Written laid = Overlay.over(read(job), (Written.Group) read(changes));
        assertThat(JsonWriter.write(laid)).isEqualTo(JsonWriter.write(read(together)));
    }

    @Test
    void only_what_comes_from_the_changes_knows_its_place() {
        Written.Group laid =
                (Written.Group) Overlay.over(read("{'a':'1','b':'2'}"), (Written.Group) read("{\n'b':'3'}"));
        assertThat(laid.entries().get(0).value().at().line()).isZero();
        assertThat(laid.entries().get(1).value().at().line()).isEqualTo(2);
    }
}
