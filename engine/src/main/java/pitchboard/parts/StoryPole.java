package pitchboard.parts;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.stair.Stair;

/**
 * The heights of all treads on one pole, from the finished lower surface, each rounded once. The last mark is the
 * finished upper surface itself.
 */
public record StoryPole(List<Marked> heights) {
    public StoryPole {
        heights = List.copyOf(heights);
    }

    public static StoryPole of(Stair stair) {
        Graduation graduation = stair.brief().tape().graduation();
        return new StoryPole(IntStream.rangeClosed(1, stair.flight().risers())
                .mapToObj(step -> Marked.of(stair.rise().times(step), graduation))
                .toList());
    }

    /** Each rise as marked: from one tape line to the next. */
    public List<Length> rises() {
        return IntStream.range(0, heights.size())
                .mapToObj(i -> heights.get(i)
                        .line()
                        .minus(i == 0 ? Length.ZERO : heights.get(i - 1).line()))
                .toList();
    }

    /** Largest rise as marked minus smallest: at most one graduation. */
    public Length spread() {
        Length largest = rises().stream().reduce(Length::max).orElseThrow();
        Length smallest = rises().stream().reduce(Length::min).orElseThrow();
        return largest.minus(smallest);
    }
}
