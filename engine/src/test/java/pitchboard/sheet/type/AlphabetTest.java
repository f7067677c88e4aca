package pitchboard.sheet.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.sheet.Face;

final class AlphabetTest {
    /** What drawings, rules and worksheets are written with. */
    private static final String DRAWING_OFFICE = "0123456789 ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz"
            + " .,:;!?'\"()[]{}<>/|\\@#$%&*+-=_~^ £€§©·•…–—‘’“”°±×÷−≈≠≤≥√²³½¼¾⅛⅜⅝⅞⁄′″←→↑↓∅ µ∆ áéíóúñüäöåøæß¿¡«»";

    @Test
    void every_character_a_drawing_needs_is_there() {
        assertThat(Alphabet.findUnknown(DRAWING_OFFICE)).isEmpty();
    }

    @Test
    void a_character_that_is_not_there_is_found_and_refused() {
        assertThat(Alphabet.findUnknown("rise ☃")).contains('☃');
        assertThat(Alphabet.findUnknown("\uFFFF")).contains('\uFFFF');
        assertThatThrownBy(() -> Typesetter.line("rise ☃", Lettering.NOTE))
                .hasMessage("the type has no character '☃' (U+2603) for \"rise ☃\"");
    }

    @Test
    void what_somebody_typed_is_printed_as_far_as_the_type_goes() {
        assertThat(Alphabet.printable("Łukasz & Zoë\t船屋")).isEqualTo("Łukasz & Zoë ??");
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void figures_are_all_of_one_width_so_that_they_stand_in_columns(Face face) {
        for (char figure = '1'; figure <= '9'; figure++) {
            assertThat(Alphabet.width(String.valueOf(figure), face)).isEqualTo(Alphabet.width("0", face));
        }
    }
}
