package pitchboard.documents.fonts;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * A TrueType font without the outlines of letters that are not used. Every glyph keeps its number, so that the maps
 * from letters to glyphs stay the font maker's own and cannot go wrong; only the outlines of the others are empty.
 */
public final class SlimFont {
    /** What a browser needs to show letters side by side; tables for other ways of setting are left out. */
    private static final List<String> KEPT =
            List.of("OS/2", "cmap", "gasp", "head", "hhea", "hmtx", "maxp", "name", "prep");

    private static final int NO_GLYPH_NAMES = 0x00030000;
    private static final int POST_HEADER = 32;

    private SlimFont() {}

    /**
     * The face with outlines for these letters, and for the box that stands for an unknown one.
     *
     * @param letters as code points
     */
    public static byte[] of(FontFile face, Set<Integer> letters) {
        byte[] whole = face.bytes();
        try (TrueTypeFont font = new TTFParser(true).parse(new RandomAccessReadBuffer(whole))) {
            Map<String, byte[]> tables = new TreeMap<>();
            for (String tag : KEPT) {
                tables.put(tag, table(font, tag));
            }
            tables.put("post", postWithoutNames(table(font, "post")));
            putOutlines(font, letters, tables);
            return SfntFile.of(tables);
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + face + " cannot be read", broken);
        }
    }

    private static byte[] table(TrueTypeFont font, String tag) throws IOException {
        return font.getTableBytes(font.getTableMap().get(tag));
    }

    private static byte[] postWithoutNames(byte[] post) {
        byte[] header = Arrays.copyOf(post, POST_HEADER);
        ByteBuffer.wrap(header).putInt(0, NO_GLYPH_NAMES);
        return header;
    }

    private static void putOutlines(TrueTypeFont font, Set<Integer> letters, Map<String, byte[]> tables)
            throws IOException {
        GlyphOutlines outlines =
                new GlyphOutlines(table(font, "glyf"), font.getIndexToLocation().getOffsets());
        Set<Integer> kept = new TreeSet<>(List.of(0));
        CmapLookup glyphs = font.getUnicodeCmapLookup();
        for (int letter : letters) {
            outlines.addWithParts(glyphs.getGlyphId(letter), kept);
        }
        ByteArrayOutputStream glyf = new ByteArrayOutputStream();
        ByteBuffer loca = ByteBuffer.allocate(4 * (outlines.count() + 1));
        for (int glyph = 0; glyph < outlines.count(); glyph++) {
            loca.putInt(glyf.size());
            if (kept.contains(glyph)) {
                glyf.writeBytes(outlines.padded(glyph));
            }
        }
        loca.putInt(glyf.size());
        tables.put("glyf", glyf.toByteArray());
        tables.put("loca", loca.array());
        SfntFile.useLongOffsets(tables.get("head"));
    }
}
