package pitchboard.buying.need;

import java.util.List;
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
 * @param joints where it may be spliced, from the end the tape hooks on; none when it must come from one board
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
        List<Length> joints,
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
        joints = List.copyOf(joints);
        if (count < 1) {
            throw new IllegalArgumentException(count + " pieces " + mark);
        }
    }
}
