package pitchboard.strength.elements.mesh;

/** A place seen from the side, in millimetres: x level, y plumb and up. */
public record Xy(double x, double y) {
    public double distanceTo(Xy other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The place a share of the way to another: 0 here, 1 there. */
    public Xy toward(Xy other, double share) {
        return new Xy(x + share * (other.x - x), y + share * (other.y - y));
    }
}
