package pitchboard.web.wire;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AttachmentTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            Stair to the loft       | Stair to the loft
            ../../etc/passwd        | etc passwd
            C:\\jobs\\x             | C jobs x
            ~ .hidden ~             | hidden
            a"b'c<d>                | a b'c d
            ~   ~                   | job
            ...                     | job
            """)
    void names_lead_nowhere(String words, String name) {
        assertThat(Attachment.safe(words)).isEqualTo(name);
    }

    @Test
    void control_and_format_characters_are_left_out() {
        assertThat(Attachment.safe("a\r\nSet-Cookie: x\u0000\u202e\u2028b\ud83d"))
                .isEqualTo("a Set-Cookie x b");
    }

    @Test
    void a_long_name_is_cut_between_signs() {
        assertThat(Attachment.safe("\ud83d\ude80".repeat(200))).isEqualTo("\ud83d\ude80".repeat(80));
    }
}
