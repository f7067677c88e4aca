package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.app.Jobs;
import pitchboard.app.OpenedJob;
import pitchboard.job.Outcome;
import pitchboard.job.Pipeline;
import pitchboard.measure.Length;
import pitchboard.parts.StringerSpacing;
import pitchboard.rules.Finding;
import pitchboard.stair.StringerShape;
import pitchboard.store.FileTrouble;

/** The examples show what they are there to show, and nothing that a carpenter would shake the head at. */
final class ExamplesTest {
    static List<Path> examples() throws IOException {
        return Run.examples();
    }

    private static Outcome solved(Path example) throws FileTrouble {
        return Pipeline.solve(((OpenedJob.Understood) Jobs.open(example)).job());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            boathouse-loft         | 14 risers, run 10 in    | -
            balcony-flush          | 4 risers, run 41/4 in   | -
            dock-over-falling-bank | 9 risers, run 11 in     | -
            workshop-finishes      | 14 risers, run 10 in    | -
            boat-store-metric      | 14 risers, run 1200/127 in | -
            estimated-rise         | 15 risers, run 21/2 in  | -
            sail-store-local       | 12 risers, run 9 in     | -
            twelve-risers-fixed    | 12 risers, run 10 in    | rise-at-most load-on-flight
            winter-hatch           | 3 risers, run 11 in     | -
            gallery-guard          | 12 risers, run 11 in    | -
            sail-room-guard        | 14 risers, run 1200/127 in | -
            crane-loft-cannot-be   | no stair                | -
            """)
    void each_passes_and_fails_as_it_is_meant_to(String name, String flight, String failing) throws FileTrouble {
        Outcome outcome = solved(Run.example(name));
        assertThat(outcome.match(ExamplesTest::flight, none -> "no stair")).isEqualTo(flight);
        assertThat(outcome.match(ExamplesTest::failing, none -> Set.<String>of()))
                .isEqualTo(Optional.ofNullable(failing).stream()
                        .flatMap(ids -> Stream.of(ids.split(" ", -1)))
                        .collect(Collectors.toSet()));
    }

    private static String flight(Outcome.Designed designed) {
        return designed.stair().flight().risers() + " risers, run "
                + designed.stair().run();
    }

    private static Set<String> failing(Outcome.Designed designed) {
        return designed.findings().stream()
                .filter(Finding::isFailure)
                .map(finding -> finding.rule().id())
                .collect(Collectors.toSet());
    }

    /** Common practice, no source: a board that carries the head lies against the header with all of its height. */
    @ParameterizedTest
    @MethodSource("examples")
    void the_header_holds_the_whole_height_of_what_carries_the_head(Path example) throws FileTrouble {
        if (solved(example) instanceof Outcome.Designed designed) {
            StringerShape shape = new StringerShape(designed.stair());
            Length carries = shape.bearingTop().minus(shape.bearingBottom());
            assertThat(shape.contactHeight()).isEqualByComparingTo(carries);
        }
    }

    /** Common practice, no source: boards of 1 in carry 16 in from middle to middle of the stringers, thicker ones 24 in. */
    @ParameterizedTest
    @MethodSource("examples")
    void thin_treads_are_carried_near_enough(Path example) throws FileTrouble {
        if (solved(example) instanceof Outcome.Designed designed) {
            Length thickness = designed.stair().brief().treads().thickness();
            Length limit = thickness.isAtMost(Length.inches(1)) ? Length.inches(16) : Length.inches(24);
            assertThat(StringerSpacing.of(designed.stair().brief()).spacing()).isLessThanOrEqualTo(limit);
        }
    }

    @Test
    void each_says_first_what_it_is_there_for() throws IOException {
        for (Path example : Run.examples()) {
            assertThat(Files.readString(example)).as("%s", example).startsWith("# ");
        }
    }
}
