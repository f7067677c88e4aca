package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.site.Rise;

/** Choosing at the edges: what was fixed, no space, ground that moves, heights that are no stair. */
final class SolverTest {
    /** Stands for a code with a rise of at most 7 3/4 in. */
    private static final Gate CODE = stair -> stair.rise().isAtMost(Length.inches(7, 3, 4))
            ? List.of()
            : List.of(new Objection(
                    "rise-at-most", "rise", stair.rise(), Length.inches(7, 3, 4), "a code", Phrase.of("add a riser")));

    private static OrdinaryJob job() {
        return OrdinaryJob.ofRise(Length.inches(105));
    }

    private static Rise.Reading reading(long distance, long drop) {
        return new Rise.Reading(Length.inches(distance), Length.inches(drop));
    }

    private static Stream<Integer> riserCounts(List<Option> options) {
        return options.stream()
                .map(option -> option.stair().flight().risers())
                .distinct()
                .sorted();
    }

    private static List<String> kinds(List<Option> options) {
        return options.stream()
                .flatMap(option -> option.objections().stream())
                .map(Objection::id)
                .toList();
    }

    @Test
    void every_count_that_the_code_allows_is_offered() {
        Choices choices = job().choices(CODE);
        assertThat(riserCounts(choices.allowed())).startsWith(14, 15, 16).endsWith(35);
        assertThat(choices.chosen()).contains(choices.allowed().get(0));
    }

    @Test
    void in_too_little_space_no_stair_fits_and_the_nearest_say_why() {
        Choices choices = job().space(Length.inches(30)).choices(Gate.OPEN);
        assertThat(choices.allowed()).isEmpty();
        assertThat(choices.chosen()).isEmpty();
        assertThat(kinds(choices.nearMisses())).containsExactly("space");
        assertThat(choices.nearMisses().get(0).stair().flight().risers()).isEqualTo(8);
    }

    @Test
    void space_smaller_than_one_tread_is_no_accident() {
        Choices choices = job().space(Length.inches(3)).choices(CODE);
        assertThat(choices.allowed()).isEmpty();
        assertThat(choices.nearMisses()).isNotEmpty();
    }

    /** Twelve runs behind a first tread of 11 1/4: (130 1/16 − 11 1/4) ÷ 12 = 9 57/64, down to the tape's 9 7/8. */
    @Test
    void the_run_that_just_fills_the_space_is_offered_to_the_tapes_line() {
        Choices choices = job().space(Length.inches(130, 1, 16)).choices(CODE);
        assertThat(choices.withRisers(14))
                .extracting(option -> option.stair().run())
                .endsWith(Length.inches(9, 3, 4), Length.inches(9, 7, 8))
                .doesNotContain(Length.inches(10));
    }

    @Test
    void with_the_risers_fixed_only_they_are_allowed_and_the_others_are_otherwise_allowed() {
        Choices choices = job().risersFixed(15).choices(CODE);
        assertThat(riserCounts(choices.allowed())).containsExactly(15);
        assertThat(riserCounts(choices.otherwiseAllowed())).startsWith(14, 16);
    }

    @Test
    void fixed_risers_that_the_code_forbids_are_forced_with_what_is_against_them() {
        Choices choices = job().risersFixed(12).choices(CODE);
        Option forced = choices.chosen().orElseThrow();
        assertThat(choices.allowed()).isEmpty();
        assertThat(forced.stair().rise()).isEqualTo(Length.inches(8, 3, 4));
        assertThat(kinds(List.of(forced))).containsExactly("rise-at-most");
        assertThat(choices.otherwiseAllowed()).isNotEmpty();
    }

    /** Five risers of 21 in are beyond any leg, but they were asked for. */
    @Test
    void fixed_risers_are_tried_however_high_they_come_out() {
        Option forced = job().risersFixed(5).choices(CODE).chosen().orElseThrow();
        assertThat(forced.stair().rise()).isEqualTo(Length.inches(21));
    }

    @Test
    void fixed_risers_that_cannot_be_built_are_not_forced() {
        assertThat(job().risersFixed(100).choices(Gate.OPEN).chosen()).isEmpty();
        assertThat(job().risersFixed(1).choices(Gate.OPEN).chosen()).isEmpty();
    }

    @Test
    void a_fixed_run_need_not_be_round() {
        Length run = Length.inches(10, 3, 16);
        Choices choices = job().runFixed(run).choices(CODE);
        assertThat(choices.allowed())
                .isNotEmpty()
                .allMatch(option -> option.stair().run().equals(run));
    }

    @Test
    void a_fixed_run_of_nothing_is_never_met() {
        Choices choices = job().runFixed(Length.ZERO).choices(CODE);
        assertThat(choices.allowed()).isEmpty();
        assertThat(choices.chosen()).isEmpty();
        assertThat(choices.otherwiseAllowed()).isNotEmpty();
    }

    /** Level ground would be 105 in below; here it drops one in five away from the head. */
    @Test
    void where_the_ground_falls_a_longer_run_climbs_more() {
        Choices choices = job().levelLine(reading(0, 105), reading(100, 125)).choices(CODE);
        assertThat(choices.withRisers(18)).isNotEmpty().allSatisfy(option -> {
            Stair stair = option.stair();
            assertThat(stair.flight().totalRise())
                    .isEqualTo(Length.inches(105).plus(stair.landing().dividedBy(5)));
        });
    }

    @Test
    void where_the_ground_climbs_to_the_edge_and_above_it_there_is_still_a_stair_close_by() {
        Choices choices = job().levelLine(reading(0, 40), reading(100, -20)).choices(CODE);
        assertThat(choices.allowed())
                .isNotEmpty()
                .allMatch(option -> option.stair().flight().totalRise().isLessThan(Length.inches(40)));
    }

    /** Ground at floor level near by and far off, with a ditch between them: only landing in it there is a climb. */
    @Test
    void a_ditch_between_two_banks_is_found() {
        Choices choices = job().levelLine(
                        reading(0, 1), reading(35, 1), reading(45, 30), reading(55, 30), reading(62, 1), reading(99, 1))
                .choices(CODE);
        assertThat(riserCounts(choices.allowed())).contains(6);
    }

    @Test
    void ground_that_falls_faster_than_any_stair_climbs_has_none() {
        Choices choices = job().levelLine(reading(0, 105), reading(10, 155)).choices(CODE);
        assertThat(choices.allowed()).isEmpty();
    }

    @Test
    void a_kerb_is_one_step_when_the_top_tread_is_flush_and_none_when_the_floor_is_the_step() {
        OrdinaryJob kerb = OrdinaryJob.ofRise(Length.inches(5));
        assertThat(kerb.choices(Gate.OPEN).allowed()).isEmpty();
        assertThat(riserCounts(kerb.flush().choices(Gate.OPEN).allowed())).containsExactly(1);
    }

    @Test
    void a_height_lower_than_any_step_or_higher_than_any_flight_has_no_candidates() {
        for (Length rise : List.of(Length.inches(-4), Length.ZERO, Length.inches(2), Length.feet(100))) {
            Choices choices = OrdinaryJob.ofRise(rise).choices(Gate.OPEN);
            assertThat(choices).isEqualTo(new Choices(List.of(), List.of(), List.of(), choices.chosen()));
            assertThat(choices.chosen()).isEmpty();
        }
    }
}
