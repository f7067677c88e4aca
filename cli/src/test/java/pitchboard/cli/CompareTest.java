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

    /** IRC 2021 R311.7.5.1 allows 7 3/4 in, IBC 2021 1011.5.2 only 7 in; both from memory in our books. */
    @Test
    void a_stair_that_the_own_book_passes_fails_under_a_stricter_one_and_one_for_both_is_found() {
        Run run = compare("--under", "IBC 2021");
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.out())
                .containsPattern("IRC 2021 +0 ")
                .contains("Fails under IBC 2021", "FAIL  rise of a step: 7.554 in (every step), must be at most 7\"");
    }

    /** 29 CFR 1926.1052(a)(2): between 30 and 50 degrees; 1910.25(c)(1) the same. */
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
