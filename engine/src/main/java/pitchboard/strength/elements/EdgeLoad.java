package pitchboard.strength.elements;

import pitchboard.strength.elements.mesh.Xy;

/**
 * A force spread over a straight piece of the outline, changing evenly from one end to the other; x level, y up, so that
 * weight is negative. The piece is measured along itself, whatever its slope.
 *
 * @param startX force per length at the beginning, N/mm; likewise the others
 */
public record EdgeLoad(Xy from, Xy to, double startX, double startY, double endX, double endY) {
    /** A plumb force, evenly spread; downN in N, below zero when it lifts. */
    public static EdgeLoad down(Xy from, Xy to, double downN) {
        return total(from, to, 0, -downN);
    }

    /** A force in N, evenly spread. */
    public static EdgeLoad total(Xy from, Xy to, double forceX, double forceY) {
        double length = from.distanceTo(to);
        return new EdgeLoad(from, to, forceX / length, forceY / length, forceX / length, forceY / length);
    }

    public double totalX() {
        return (startX + endX) / 2 * from.distanceTo(to);
    }

    /** In N, upward. */
    public double totalY() {
        return (startY + endY) / 2 * from.distanceTo(to);
    }
}
