package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class CompareTest {
    private static Run compare(String... arguments) {
        String[] all = new String[arguments.length + 2];
        all[0] = "compare";
        all[1] = Run.example("boathouse-loft").toString();
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        return Run.of(all);
    }

    /**
     * IRC R311.7.5.1 allows 7 3/4 in, IBC 1011.5.2 only 7 in, as the rulebooks cite them. With 11 in of run for that rise
     * the flight no longer fits the space of 11 ft 6 in.
     */
    @Test
    void a_stair_that_the_own_book_passes_fails_under_a_stricter_one_and_the_nearest_for_both_is_told() {
        Run run = compare("--under", "IBC 2021");
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.out())
                .containsPattern("IRC 2021 +0 ")
                .contains("Fails under IBC 2021", "FAIL  rise of a step: 7.554 in (every step), must be at most 7\"")
                .contains("No choice of risers and run fits under all of them; nearest", "16 risers of 6 5/8\"");
    }

    @Test
    void the_same_book_again_is_no_second_column() {
        Run run = compare("--under", "IRC 2021");
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).containsOnlyOnce("IRC 2021 ").contains("Risers and run that fit under all of them");
    }

    @Test
    void an_unknown_book_is_refused_by_its_name() {
        Run run = compare("--under", "IRC 1818");
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.err()).contains("there is no rulebook called IRC 1818");
    }

    @Test
    void for_other_programs_it_is_json() {
        assertThat(compare("--under", "IBC 2021", "--json").out())
                .startsWith("{\"job\":\"Stair to the sail loft\"")
                .contains("\"rulebook\":\"IBC 2021\"", "\"together\":");
    }
}
