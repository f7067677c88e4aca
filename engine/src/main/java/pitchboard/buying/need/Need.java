package pitchboard.buying.need;

import java.util.Optional;
import pitchboard.buying.yard.Use;
import pitchboard.measure.Length;

/**
 * Pieces alike.
 *
 * @param mark what is pencilled on each, such as {@code T}; with several jobs the job's letter stands before it
 * @param name of the piece, such as {@code tread}
 * @param thickness as it measures
 * @param width of the finished piece; a wider board is ripped to it
 * @param length to be cut, on a line of the job's tape
 * @param nested how two of them lie in one board, the second turned end for end; empty when they cannot
 */
public record Need(
        String mark,
        String name,
        Use use,
        int count,
        Length thickness,
        Length width,
        Length length,
        Optional<Nested> nested) {
    /**
     * Two pieces in one board.
     *
     * @param length of board they need together
     * @param meeting which ends of them lie side by side
     */
    public record Nested(Length length, Ends meeting) {}

    /** The ends of a stringer. */
    public enum Ends {
        HEADS("heads"),
        FEET("feet");

        private final String words;

        Ends(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Need {
        if (count < 1) {
            throw new IllegalArgumentException(count + " pieces " + mark);
        }
    }
}
