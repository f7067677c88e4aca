package pitchboard.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class HoursInPlaceTest {
    private static final String LINES = "hours:\n  - { task: tread, hours: 0.3 }\n";

    @Test
    void the_old_list_goes_and_everything_else_stays() {
        assertThat(HoursInPlace.of("""
                # rates
                hour: 46   # each
                hours:     # ours
                  - { task: tread, hours: 0.2 }
                  # a note between
                  - task: post
                    hours: 1
                waste: 10 %
                """, LINES)).isEqualTo("""
                # rates
                hour: 46   # each
                hours:
                  - { task: tread, hours: 0.3 }
                waste: 10 %
                """);
    }

    @Test
    void a_list_without_blanks_before_its_dashes_goes_whole() {
        assertThat(HoursInPlace.of(
                        "hours:\n- { task: tread, hours: 1 }\n- { task: post, hours: 1 }\nwaste: 1 %\n", LINES))
                .isEqualTo(LINES + "waste: 1 %\n");
    }

    @Test
    void where_there_was_none_it_comes_after_the_hour() {
        assertThat(HoursInPlace.of("hour: 46\nwaste: 10 %\n", LINES)).isEqualTo("hour: 46\n" + LINES + "waste: 10 %\n");
    }
}
