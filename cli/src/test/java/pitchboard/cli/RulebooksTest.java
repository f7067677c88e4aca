package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class RulebooksTest {
    private static Run oneRail(String... books) {
        String[] arguments = new String[1 + 2 * books.length];
        arguments[0] = "rulebooks";
        for (int i = 0; i < books.length; i++) {
            arguments[1 + 2 * i] = "--one-rail";
            arguments[2 + 2 * i] = books[i];
        }
        return Run.of(arguments);
    }

    /** IRC 2018 R311.7.8.1 and R312.1.2, 29 CFR 1926.1052(c)(3), (c)(6) and (c)(7). */
    @Test
    void one_rail_for_a_house_and_its_building_site_is_36_to_37_inches_high() {
        Run run = oneRail("IRC 2018", "OSHA 1926");
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(run.out())
                .isEqualTo("one rail as handrail and top of the guard: 36\" (914.4 mm) at least, 37\" (939.8 mm)"
                        + " at most\n");
    }

    /** 29 CFR 1910.29(f)(1): a stair rail of 42 in, a handrail of 38 in at most. */
    @Test
    void where_one_cannot_be_both_it_says_so() {
        Run run = oneRail("osha 1910");
        assertThat(run.code()).isEqualTo(ExitCode.FAILING);
        assertThat(run.out()).contains("42\"", "at least", "38\"", "at most: not possible, fit two\n");
    }

    @Test
    void a_side_without_a_limit_is_left_out() {
        assertThat(oneRail("NCC 2022 private").out()).endsWith("guard: 34.055 in (865 mm) at least\n");
        assertThat(oneRail("AS 1657:2018").out()).endsWith("guard: no limit\n");
    }

    @Test
    void an_unknown_book_is_refused_by_its_name() {
        Run run = oneRail("IRC 2018", "IRC 1818");
        assertThat(run.code()).isEqualTo(ExitCode.NOT_UNDERSTOOD);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("there is no rulebook called IRC 1818");
    }
}
