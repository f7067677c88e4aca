package pitchboard.parts;

import java.util.List;
import java.util.stream.IntStream;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.measure.Pitch;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/**
 * A stringer as it lies on its board. In this frame x runs along the board's top edge from the datum, a line squared
 * across the board where the outline begins at the foot; y is square to the edge, 0 on it and negative into the wood.
 */
public record StringerLayout(StringerShape shape, Outline outline, Length datum) {
    /** Lays the finished outline on a board, as near its foot end as it goes. */
    public static StringerLayout of(Stair stair) {
        StringerShape shape = new StringerShape(stair);
        Outline turned = shape.outline().mapped(corner -> turned(stair, corner));
        Length datum = turned.least(Point::x);
        return new StringerLayout(shape, turned.mapped(corner -> corner.shifted(datum.negated(), Length.ZERO)), datum);
    }

    /** Turns a point of the site frame about the first step's corner, so that the slope lies level. */
    private static Point turned(Stair stair, Point point) {
        Pitch pitch = stair.pitch();
        Length up = point.y().minus(stair.levelCut(1));
        return Point.of(
                pitch.cosTimes(point.x()).plus(pitch.sinTimes(up)),
                pitch.cosTimes(up).minus(pitch.sinTimes(point.x())));
    }

    private Stair stair() {
        return shape.stair();
    }

    /** Where a point of the site frame lies on the board. */
    public Point onBoard(Point sitePoint) {
        return turned(stair(), sitePoint).shifted(datum.negated(), Length.ZERO);
    }

    /** From datum to the far end of the outline, along the board. */
    public Length extent() {
        return outline.greatest(Point::x);
    }

    /** The board a stringer needs: its extent and the trimming at both ends. */
    public Length boardNeeded() {
        return extent().plus(stair().brief().stringers().trim().times(2));
    }

    /** Along the edge from one step's corner to the next: {@code √(r² + g²)}. */
    public Length stepAlongEdge() {
        return stair().pitch().alongForLevel(stair().run());
    }

    /** The corner of every step on the top edge, each rounded once. */
    public List<RunningMark> marks() {
        Graduation graduation = stair().brief().tape().graduation();
        return IntStream.rangeClosed(1, stair().treads())
                .mapToObj(step -> new RunningMark(step, Marked.of(cornerMark(step), graduation)))
                .toList();
    }

    /** From the datum to the corner of a step, exactly. */
    public Length cornerMark(int step) {
        return stepAlongEdge().times(step - 1L).minus(datum);
    }

    /** Where the level cut of the foot meets the bottom edge, or the head in a flight lower than the board is deep. */
    public Marked heelMark() {
        return bottomMark(shape.heel());
    }

    /** Where the bottom edge ends at the head; what {@link StringerShape#headEnd} says of other cases holds here, too. */
    public Marked headMark() {
        return bottomMark(shape.headEnd());
    }

    private Marked bottomMark(Point point) {
        return Marked.of(onBoard(point).x(), stair().brief().tape().graduation());
    }
}
