package pitchboard.documents.fonts;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Puts the tables of a TrueType font together to a file, as the OpenType specification's font file chapter says. */
final class SfntFile {
    private static final int TRUE_TYPE = 0x00010000;
    private static final int CHECKSUM_OF_ALL = 0xB1B0AFBA;
    private static final int HEADER = 12;
    private static final int ENTRY = 16;
    /** Places in the {@code head} table. */
    private static final int ADJUSTMENT = 8;

    private static final int OFFSET_FORMAT = 50;

    private SfntFile() {}

    /** Tells readers that glyphs are found by four-byte offsets. */
    static void useLongOffsets(byte[] head) {
        ByteBuffer.wrap(head).putShort(OFFSET_FORMAT, (short) 1);
    }

    /**
     * The file.
     *
     * @param tables by tag, in the order of tags
     */
    static byte[] of(Map<String, byte[]> tables) {
        ByteBuffer.wrap(tables.get("head")).putInt(ADJUSTMENT, 0);
        int start = HEADER + ENTRY * tables.size();
        int length = start
                + tables.values().stream()
                        .mapToInt(table -> padded(table.length))
                        .sum();
        ByteBuffer file = ByteBuffer.allocate(length);
        int largest = Integer.highestOneBit(tables.size());
        file.putInt(TRUE_TYPE).putShort((short) tables.size()).putShort((short) (largest * ENTRY));
        file.putShort((short) Integer.numberOfTrailingZeros(largest));
        file.putShort((short) ((tables.size() - largest) * ENTRY));
        int at = start;
        int headAt = 0;
        for (Map.Entry<String, byte[]> table : tables.entrySet()) {
            byte[] bytes = table.getValue();
            file.put(at, bytes);
            file.put(table.getKey().getBytes(StandardCharsets.US_ASCII));
            file.putInt(checksum(file, at, padded(bytes.length))).putInt(at).putInt(bytes.length);
            headAt = table.getKey().equals("head") ? at : headAt;
            at += padded(bytes.length);
        }
        file.putInt(headAt + ADJUSTMENT, CHECKSUM_OF_ALL - checksum(file, 0, length));
        return file.array();
    }

    private static int padded(int length) {
        return (length + 3) / 4 * 4;
    }

    private static int checksum(ByteBuffer file, int from, int length) {
        int sum = 0;
        for (int at = from; at < from + length; at += 4) {
            sum += file.getInt(at);
        }
        return sum;
    }
}
