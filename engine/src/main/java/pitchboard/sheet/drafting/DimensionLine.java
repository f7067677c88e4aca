package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;

/**
 * The straight line a dimension string is drawn on, and the strokes on it.
 *
 * @param through any spot of the line
 * @param direction degrees; 0 is right, 90 is up the page
 */
record DimensionLine(Spot through, double direction) {
    /** An extension line begins 1/16 in off the object and passes the dimension line by 1/8 in. */
    static final double OFF_OBJECT = 25.4 / 16;

    static final double PAST_LINE = 25.4 / 8;
    /** A tick is 1/8 in long across its slope. */
    static final double TICK = 25.4 / 8;
    /** How far the line itself passes the last tick. */
    static final double OVERRUN = 1.5;

    private static final double TICK_TURN = 45;

    /** Where a station's extension line meets the line. */
    Spot foot(Spot station) {
        double along = along(station);
        return through.toward(direction, along);
    }

    /** How far along the line a spot lies, from the spot the line is given by. */
    double along(Spot spot) {
        double radians = Math.toRadians(direction);
        return (spot.x() - through.x()) * Math.cos(radians) - (spot.y() - through.y()) * Math.sin(radians);
    }

    /** The extension line and the tick of one station; no extension line where the station lies on the line. */
    List<Mark> end(PartRef of, Spot station) {
        List<Mark> strokes = new ArrayList<>();
        Spot foot = foot(station);
        double distance = station.distanceTo(foot);
        if (distance > OFF_OBJECT) {
            double away = station.directionTo(foot);
            strokes.add(new Mark.Line(
                    of,
                    List.of(station.toward(away, OFF_OBJECT), station.toward(away, distance + PAST_LINE)),
                    Pen.DIMENSION));
        }
        strokes.add(tick(of, foot));
        return strokes;
    }

    private Mark tick(PartRef of, Spot foot) {
        double slope = direction + TICK_TURN;
        return new Mark.Line(of, List.of(foot.toward(slope, -TICK / 2), foot.toward(slope, TICK / 2)), Pen.TICK);
    }

    /** The line between two stations, passing each end by so much. */
    Mark between(PartRef of, Spot from, Spot to, double before, double after) {
        Spot start = foot(from);
        Spot end = foot(to);
        double way = start.directionTo(end);
        return new Mark.Line(of, List.of(start.toward(way, -before), end.toward(way, after)), Pen.DIMENSION);
    }

    /** The turn of a label along the line, so that it reads from below or from the right. */
    double labelTurn() {
        double turn = direction % 180;
        if (turn > 90.001) {
            return turn - 180;
        }
        return turn < -89.999 ? turn + 180 : turn;
    }
}
