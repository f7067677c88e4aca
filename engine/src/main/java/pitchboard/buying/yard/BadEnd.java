package pitchboard.buying.yard;

import java.util.List;
import pitchboard.measure.Length;

/**
 * One end of a board that is split or stamped, beside what is trimmed off.
 *
 * @param length of it; zero when both ends are good
 * @param bears what may be cut from it all the same; every other piece avoids it
 */
public record BadEnd(Length length, List<Use> bears) {
    public static final BadEnd NONE = new BadEnd(Length.ZERO, List.of());

    public BadEnd {
        bears = List.copyOf(bears);
    }
}
