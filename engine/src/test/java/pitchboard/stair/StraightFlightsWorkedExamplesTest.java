package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.parts.StoryPole;

/**
 * Published straight flights. Where a book's figures close, the solver gives the same stair; where a book rounded or
 * slipped, our exact rise stands beside the printed one, with what the printed one leaves over.
 */
final class StraightFlightsWorkedExamplesTest {
    static Stream<PrintedFlight> all() {
        return PrintedFlight.all();
    }

    static Stream<PrintedFlight> exact() {
        return all().filter(PrintedFlight::isExact);
    }

    static Stream<PrintedFlight> withPrintedRise() {
        return all().filter(printed -> printed.findRise().isPresent());
    }

    static Stream<PrintedFlight> withRun() {
        return all().filter(printed -> printed.findRun().isPresent());
    }

    private static Length rise(PrintedFlight printed) {
        return printed.job().stair(printed.risers(), Length.inches(10)).rise();
    }

    private static String inItsUnit(PrintedFlight printed, Length length) {
        Ratio value = printed.tape().isInches() ? length.inInches() : length.inMm();
        return ExactText.mixed(value);
    }

    @Test
    void six_of_fifteen_close() {
        assertThat(exact()).hasSize(6);
        assertThat(all()).hasSize(15);
    }

    @ParameterizedTest
    @MethodSource("all")
    void the_exact_rise_is_ours(PrintedFlight printed) {
        assertThat(inItsUnit(printed, rise(printed))).isEqualTo(printed.exactRise());
    }

    @ParameterizedTest
    @MethodSource("exact")
    void a_rise_that_closes_is_ours_too(PrintedFlight printed) {
        assertThat(printed.findRise()).contains(rise(printed));
    }

    @ParameterizedTest
    @MethodSource("withPrintedRise")
    void stepping_the_printed_rise_off_is_out_by_what_the_table_says(PrintedFlight printed) {
        Length stepped = printed.findRise().orElseThrow().times(printed.risers());
        assertThat(inItsUnit(printed, stepped.minus(printed.totalRise()))).isEqualTo(printed.over());
        assertThat(rise(printed).times(printed.risers())).isEqualTo(printed.totalRise());
    }

    @ParameterizedTest
    @MethodSource("withRun")
    void treads_and_total_run_are_as_printed(PrintedFlight printed) {
        Flight flight = printed.job()
                .stair(printed.risers(), printed.findRun().orElseThrow())
                .flight();
        assertThat(printed.findTreads()).contains(flight.treads());
        assertThat(printed.findTotalRun()).contains(flight.totalRun());
    }

    @ParameterizedTest
    @MethodSource("withRun")
    void the_solver_offers_it_and_takes_it_when_risers_and_run_are_fixed(PrintedFlight printed) {
        Length run = printed.findRun().orElseThrow();
        Choices choices =
                printed.job().risersFixed(printed.risers()).runFixed(run).choices(Gate.OPEN);
        Flight flight = printed.job().stair(printed.risers(), run).flight();
        assertThat(choices.allowed())
                .extracting(option -> option.stair().flight())
                .containsExactly(flight);
        assertThat(choices.chosen()).map(option -> option.stair().flight()).contains(flight);
    }

    /** Whatever was done to the rise in print, marks from one datum arrive at the floor. */
    @ParameterizedTest
    @MethodSource("all")
    void the_last_mark_on_the_story_pole_is_the_printed_total_rise(PrintedFlight printed) {
        Stair stair = printed.job().stair(printed.risers(), Length.inches(10));
        assertThat(StoryPole.of(stair).heights())
                .hasSize(printed.risers())
                .last()
                .satisfies(mark -> assertThat(mark.line()).isEqualTo(printed.totalRise()));
    }
}
