package pitchboard.documents.fonts;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Set;

/** The outlines in a font, glyph by glyph, as the OpenType specification's {@code glyf} table lays them down. */
final class GlyphOutlines {
    private static final int HEADER = 10;
    private static final int ARGUMENTS_ARE_WORDS = 0x0001;
    private static final int HAS_SCALE = 0x0008;
    private static final int MORE_PARTS = 0x0020;
    private static final int HAS_TWO_SCALES = 0x0040;
    private static final int HAS_MATRIX = 0x0080;

    private final byte[] glyf;
    private final long[] offsets;

    /** Outlines one after the other, each from its offset to the next one's. */
    GlyphOutlines(byte[] glyf, long[] offsets) {
        this.glyf = glyf;
        this.offsets = offsets;
    }

    int count() {
        return offsets.length - 1;
    }

    /** The bytes of one outline, filled up to whole words; empty for a glyph without ink. */
    byte[] padded(int glyph) {
        int length = length(glyph);
        return Arrays.copyOfRange(glyf, (int) offsets[glyph], (int) offsets[glyph] + (length + 3) / 4 * 4);
    }

    private int length(int glyph) {
        return (int) (offsets[glyph + 1] - offsets[glyph]);
    }

    /** Adds a glyph, and those it is put together from, as an accented letter is. */
    void addWithParts(int glyph, Set<Integer> kept) {
        if (!kept.add(glyph) || length(glyph) == 0) {
            return;
        }
        ByteBuffer outline = ByteBuffer.wrap(glyf, (int) offsets[glyph], length(glyph));
        boolean isComposite = outline.getShort() < 0;
        outline.position(outline.position() + HEADER - Short.BYTES);
        int flags = isComposite ? MORE_PARTS : 0;
        while ((flags & MORE_PARTS) != 0) {
            flags = outline.getShort();
            addWithParts(Short.toUnsignedInt(outline.getShort()), kept);
            outline.position(outline.position() + placing(flags));
        }
    }

    /** How many bytes say where a part stands and how it is scaled. */
    private static int placing(int flags) {
        int arguments = (flags & ARGUMENTS_ARE_WORDS) != 0 ? 4 : 2;
        if ((flags & HAS_SCALE) != 0) {
            return arguments + 2;
        }
        if ((flags & HAS_TWO_SCALES) != 0) {
            return arguments + 4;
        }
        return (flags & HAS_MATRIX) != 0 ? arguments + 8 : arguments;
    }
}
