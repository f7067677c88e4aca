package pitchboard.plane;

import pitchboard.measure.Length;

/** An exact place in an upright plane: x level, y plumb and up. */
public record Point(Length x, Length y) {
    public static Point of(Length x, Length y) {
        return new Point(x, y);
    }

    public Point shifted(Length right, Length up) {
        return new Point(x.plus(right), y.plus(up));
    }
}
