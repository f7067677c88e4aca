package pitchboard.store.library;

import java.nio.charset.StandardCharsets;
import pitchboard.intake.written.Transcript;
import pitchboard.store.Notation;

/** A text as somebody wrote it, letter for letter. */
public record Wording(Notation notation, String text) {
    public Wording {
        requireWhole(text);
    }

    /**
     * Half of a sign that needs two (a lone surrogate) cannot be written to a file as it is; readers refuse it, so none
     * gets here but by mistake.
     */
    static void requireWhole(String text) {
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw new IllegalArgumentException("a text with half a sign in it cannot be kept");
        }
    }

    /** Its shape, or why it has none. */
    public Transcript read() {
        return notation.read(text);
    }

    /**
     * Whether keeping the other one too would add nothing: the same letters, or the same pieces written down in another
     * notation. A comment or a blank more in the same notation is something to keep.
     */
    boolean addsNothingTo(Wording other) {
        if (notation == other.notation) {
            return text.equals(other.text);
        }
        return read() instanceof Transcript.Legible mine
                && other.read() instanceof Transcript.Legible theirs
                && mine.written().anywhere().equals(theirs.written().anywhere());
    }
}
