package pitchboard.sheet.drafting;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;

/**
 * Where model points fall on paper.
 *
 * @param origin where the model's origin falls
 * @param turn degrees by which the model is turned anticlockwise: minus the pitch lays a stringer level
 */
public record View(Scale scale, Spot origin, double turn) {
    public static View of(Scale scale, Spot origin) {
        return new View(scale, origin, 0);
    }

    /** The view at the largest of the scales at which all points fit the room, in the middle of it. */
    public static View fitting(Box room, List<Point> extent, List<Scale> scales) {
        return fitting(room, extent, scales, 0);
    }

    /** The same with the model turned. When even the smallest scale is too large, one to the next whole ten. */
    public static View fitting(Box room, List<Point> extent, List<Scale> scales, double turn) {
        Box life = new View(Scale.TRUE_SIZE, Spot.of(0, 0), turn).around(extent);
        double largest = Math.min(room.width() / life.width(), room.height() / life.height());
        Scale scale = scales.stream()
                .filter(candidate -> candidate.factor() <= largest)
                .findFirst()
                .orElseGet(() -> Scale.oneTo(10 * (int) Math.ceil(0.1 / largest)));
        return new View(scale, Spot.of(0, 0), turn).centredIn(room, extent);
    }

    /** The same view moved so that the points stand in the middle of the room. */
    public View centredIn(Box room, List<Point> extent) {
        Spot middle = around(extent).centre();
        Spot wanted = room.centre();
        return movedBy(wanted.x() - middle.x(), wanted.y() - middle.y());
    }

    public View movedBy(double right, double down) {
        return new View(scale, origin.shifted(right, down), turn);
    }

    /** The same view with the model turned about its origin, so many degrees anticlockwise from how it is drawn now. */
    public View turned(double degrees) {
        return new View(scale, origin, turn + degrees);
    }

    public Spot at(Point point) {
        return at(point.x(), point.y());
    }

    public Spot at(Length x, Length y) {
        return atMm(x.approxMm(), y.approxMm());
    }

    /** Where a place given in millimetres of the model falls, for what is only indicated. */
    public Spot atMm(double x, double y) {
        if (turn == 0) {
            return origin.shifted(x * scale.factor(), -(y * scale.factor()));
        }
        return origin.toward(turn, x * scale.factor()).toward(turn + 90, y * scale.factor());
    }

    public List<Spot> at(List<Point> points) {
        return points.stream().map(this::at).toList();
    }

    public List<Spot> at(Outline outline) {
        return at(outline.corners());
    }

    /** The smallest upright box on paper around the points. */
    public Box around(List<Point> points) {
        return Box.around(at(points));
    }

    /** A length as it is long on paper, in millimetres. */
    public double onPaper(Length length) {
        return length.approxMm() * scale.factor();
    }

    /** The point as a station of a level dimension string. */
    public Station level(Point point) {
        return new Station(point.x(), at(point));
    }

    /** The point as a station of a plumb dimension string. */
    public Station plumb(Point point) {
        return new Station(point.y(), at(point));
    }
}
