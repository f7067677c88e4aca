package pitchboard.sheet.type;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class ParagraphLawsTest {
    private static final List<String> WORDS =
            List.of("rise", "run", "7", "3⁄4", "11⁄16", "**throat**", "of", "the", "stringer,", "−", "×", "8′-9", "a");

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void every_line_fits_and_no_word_is_lost(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        String text = random.ints(random.nextInt(1, 60), 0, WORDS.size())
                .mapToObj(WORDS::get)
                .collect(Collectors.joining(" "));
        double width = random.nextDouble(25, 120);
        Paragraph paragraph = Typesetter.paragraph(text, Lettering.NOTE, width);
        assertThat(paragraph.width()).isLessThanOrEqualTo(width);
        String joined = paragraph.rows().stream().map(row -> row.line().reads()).collect(Collectors.joining(" "));
        assertThat(joined).isEqualTo(text.replace("**", ""));
    }
}
