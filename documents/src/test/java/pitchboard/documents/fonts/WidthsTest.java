package pitchboard.documents.fonts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.sheet.Face;
import pitchboard.sheet.type.Alphabet;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;

/** The widths that text is set with are those of the font files that it is printed with. */
final class WidthsTest {
    private static TrueTypeFont font(Face face) throws IOException {
        return new TTFParser(true)
                .parse(new RandomAccessReadBuffer(FontFile.of(face).bytes()));
    }

    private static List<String> alphabet() {
        List<String> letters = new ArrayList<>();
        for (char letter = ' '; letter < '\uFFFF'; letter++) {
            String text = String.valueOf(letter);
            if (Alphabet.findUnknown(text).isEmpty()) {
                letters.add(text);
            }
        }
        return letters;
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void every_letter_is_as_wide_as_in_the_font(Face face) throws IOException {
        assertThat(alphabet()).hasSizeGreaterThan(500);
        try (TrueTypeFont font = font(face)) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            for (String letter : alphabet()) {
                int glyph = glyphs.getGlyphId(letter.charAt(0));
                assertThat(glyph).as(letter).isPositive();
                assertThat(Typesetter.width(letter, new Lettering(1000, face)))
                        .as(letter)
                        .isEqualTo(font.getAdvanceWidth(glyph) * 1000.0 / font.getUnitsPerEm(), within(1e-6));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void capitals_are_as_tall_and_descenders_as_deep_as_in_the_font(Face face) throws IOException {
        try (TrueTypeFont font = font(face)) {
            double em = font.getUnitsPerEm();
            assertThat(font.getOS2Windows().getCapHeight() / em).isEqualTo(Alphabet.CAP_HEIGHT);
            for (char letter : "gjpqyQ,;()[]{}|/⁄".toCharArray()) {
                int glyph = font.getUnicodeCmapLookup().getGlyphId(letter);
                double lowest = font.getGlyph().getGlyph(glyph).getYMinimum() / em;
                assertThat(-lowest).as("depth of " + letter).isLessThanOrEqualTo(Alphabet.DESCENT);
            }
        }
    }
}
