package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class PhraseTest {
    private static final Phrase ADVICE =
            Phrase.of("use {} risers: the rise becomes {}", new Count(14), Length.inches(7, 1, 2));

    @Test
    void quantities_are_lettered_for_the_tape_of_the_reader() {
        assertThat(ADVICE.write(Tape.SIXTEENTHS, Tape.Style.PLAIN))
                .isEqualTo("use 14 risers: the rise becomes 7 1/2\"");
        assertThat(ADVICE.write(Tape.SIXTEENTHS, Tape.Style.PRINTED))
                .isEqualTo("use 14 risers: the rise becomes 7 1⁄2″");
        assertThat(ADVICE.write(Tape.MILLIMETRES, Tape.Style.PLAIN))
                .isEqualTo("use 14 risers: the rise becomes 190.5 mm");
    }

    @Test
    void two_are_joined_with_words_between() {
        Phrase run = Phrase.of("lengthen the run to {}", Length.inches(11));
        assertThat(run.and(", or ", ADVICE))
                .hasToString("lengthen the run to 11\", or use 14 risers: the rise becomes 7 1/2\"");
    }

    @Test
    void equal_is_what_reads_the_same_however_it_came_about() {
        assertThat(Phrase.later(() -> ADVICE)).isEqualTo(ADVICE).hasSameHashCodeAs(ADVICE);
        assertThat(Phrase.of("put in a light")).isNotEqualTo(ADVICE).hasToString("put in a light");
    }

    @Test
    void advice_is_thought_out_only_when_it_is_read() {
        int[] asked = {0};
        Phrase advice = Phrase.later(() -> {
            asked[0]++;
            return ADVICE;
        });
        assertThat(asked[0]).isZero();
        assertThat(advice.write(Tape.SIXTEENTHS, Tape.Style.PLAIN)).startsWith("use 14 risers");
        assertThat(asked[0]).isEqualTo(1);
    }
}
