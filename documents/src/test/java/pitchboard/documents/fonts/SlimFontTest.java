package pitchboard.documents.fonts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class SlimFontTest {
    /** Accented letters are put together from others; figures must never be taken for each other. */
    private static final Set<Integer> LETTERS = letters("8′-9 3⁄4″ = 105 ± 7 é ñ Ÿ Stringer ½");

    private static Set<Integer> letters(String text) {
        Set<Integer> letters = new TreeSet<>();
        text.codePoints().forEach(letters::add);
        return letters;
    }

    private static TrueTypeFont parsed(byte[] bytes) throws IOException {
        return new TTFParser(true).parse(new RandomAccessReadBuffer(bytes));
    }

    private static String outline(TrueTypeFont font, int letter) throws IOException {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(letter);
        return font.getGlyph().getGlyph(glyph) == null
                ? ""
                : Outlines.words(font.getGlyph().getGlyph(glyph).getPath());
    }

    @ParameterizedTest
    @EnumSource(FontFile.class)
    void the_letters_in_use_look_as_they_did_and_are_as_wide(FontFile face) throws IOException {
        try (TrueTypeFont whole = parsed(face.bytes());
                TrueTypeFont slim = parsed(SlimFont.of(face, LETTERS))) {
            for (int letter : LETTERS) {
                int glyph = whole.getUnicodeCmapLookup().getGlyphId(letter);
                assertThat(slim.getUnicodeCmapLookup().getGlyphId(letter)).isEqualTo(glyph);
                assertThat(outline(slim, letter)).isEqualTo(outline(whole, letter));
                assertThat(slim.getAdvanceWidth(glyph)).isEqualTo(whole.getAdvanceWidth(glyph));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(FontFile.class)
    void the_other_letters_are_gone_and_the_file_is_small(FontFile face) throws IOException {
        byte[] slim = SlimFont.of(face, LETTERS);
        assertThat(slim.length).isLessThan(face.bytes().length / 4);
        try (TrueTypeFont font = parsed(slim)) {
            for (int letter : List.of((int) 'Q', (int) '6', (int) 'Ð')) {
                assertThat(outline(font, letter)).isEmpty();
            }
        }
    }
}
