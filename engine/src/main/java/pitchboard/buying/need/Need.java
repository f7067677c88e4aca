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
 * @param nested the length of board two of them need together, lying head to foot; empty when they cannot
 */
public record Need(
        String mark,
        String name,
        Use use,
        int count,
        Length thickness,
        Length width,
        Length length,
        Optional<Length> nested) {
    public Need {
        if (count < 1) {
            throw new IllegalArgumentException(count + " pieces " + mark);
        }
    }
}
