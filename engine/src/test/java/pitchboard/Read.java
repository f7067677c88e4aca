package pitchboard;

import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeReader;

/** Lengths as books print them: {@code 8'-11"}, {@code 7 1/8}, {@code 181.2}. */
public final class Read {
    private Read() {}

    /** A bare number counts inches. */
    public static Length inches(String text) {
        return length(text, Tape.Units.INCHES);
    }

    /** A bare number counts millimetres. */
    public static Length mm(String text) {
        return length(text, Tape.Units.MILLIMETRES);
    }

    public static Length length(String text, Tape.Units bare) {
        return TapeReader.readSigned(text, bare).match(read -> read.length(), unread -> {
            throw new AssertionError(text + ": " + unread.sentence());
        });
    }
}
