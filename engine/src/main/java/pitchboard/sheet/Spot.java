package pitchboard.sheet;

import pitchboard.measure.Decimals;

/** A place on paper, in millimetres from the top left corner, y down; kept to a ten-thousandth of a millimetre. */
public record Spot(double x, double y) {
    /** Because the last bits of sines differ between machines, and the same sheet must be the same bytes everywhere. */
    public Spot {
        x = settled(x);
        y = settled(y);
    }

    public static Spot of(double x, double y) {
        return new Spot(x, y);
    }

    /** A number of millimetres or degrees as a settled mark keeps it: four decimals, never minus zero. */
    public static double settled(double value) {
        return Decimals.rounded(value, 4);
    }

    /** Written out, as is the next, because making the generated ones takes a cold program many milliseconds. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Spot that && x == that.x && y == that.y;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(x) + Double.hashCode(y);
    }

    public Spot shifted(double right, double down) {
        return new Spot(x + right, y + down);
    }

    /** The spot this far away, in a direction given in degrees: 0 is right, 90 is up the page. */
    public Spot toward(double degrees, double distance) {
        double radians = Math.toRadians(degrees);
        return new Spot(x + distance * Math.cos(radians), y - distance * Math.sin(radians));
    }

    /** The direction from here to there in degrees, over -180 to 180: 0 is right, 90 is up the page. */
    public double directionTo(Spot other) {
        return Math.toDegrees(Math.atan2(y - other.y, other.x - x));
    }

    public double distanceTo(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    public Spot midTo(Spot other) {
        return new Spot((x + other.x) / 2, (y + other.y) / 2);
    }
}
