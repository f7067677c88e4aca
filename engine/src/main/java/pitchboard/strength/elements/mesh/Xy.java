package pitchboard.strength.elements.mesh;

/** A place seen from the side, in millimetres: x level, y plumb and up. */
public record Xy(double x, double y) {
    public double distanceTo(Xy other) {
        return length(other.x - x, other.y - y);
    }

    /** The place a share of the way to another: 0 here, 1 there. */
    public Xy toward(Xy other, double share) {
        return new Xy(x + share * (other.x - x), y + share * (other.y - y));
    }

    /** Of a way so far level and so far plumb. By a plain root, which is the same to the last digit on every machine. */
    public static double length(double level, double plumb) {
        return Math.sqrt(level * level + plumb * plumb);
    }
}
