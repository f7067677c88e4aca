package pitchboard.sheet;

import java.util.List;

/** A rectangle that may be turned: the place a line of text takes up. Corners in order round it. */
public record Quad(List<Spot> corners) {
    /** Less than the eye sees; keeps neighbours that only touch apart. */
    private static final double TOUCH = 0.01;

    public Quad {
        corners = List.copyOf(corners);
    }

    public static Quad of(Box box) {
        return new Quad(box.corners());
    }

    /** A rectangle given in the frame of a turned baseline: across along it, up square to it. */
    public static Quad turned(Spot at, double turn, double fromAcross, double fromUp, double toAcross, double toUp) {
        return new Quad(List.of(
                at.toward(turn, fromAcross).toward(turn + 90, fromUp),
                at.toward(turn, toAcross).toward(turn + 90, fromUp),
                at.toward(turn, toAcross).toward(turn + 90, toUp),
                at.toward(turn, fromAcross).toward(turn + 90, toUp)));
    }

    public Box box() {
        return Box.around(corners);
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(Quad other) {
        return !isApartAlongAnEdgeOf(this, other) && !isApartAlongAnEdgeOf(other, this);
    }

    /** Whether a straight stroke passes through the inside. */
    public boolean isCrossedBy(Spot from, Spot to) {
        Quad stroke = new Quad(List.of(from, to, to, from));
        return overlaps(stroke) && !isApart(stroke, this, to.y() - from.y(), from.x() - to.x());
    }

    private static boolean isApartAlongAnEdgeOf(Quad edged, Quad other) {
        for (int i = 0; i < 2; i++) {
            Spot a = edged.corners.get(i);
            Spot b = edged.corners.get(i + 1);
            if (isApart(edged, other, b.x() - a.x(), b.y() - a.y())) {
                return true;
            }
        }
        return false;
    }

    /** Whether the shadows on a direction are apart; a direction of no length tells nothing. */
    private static boolean isApart(Quad one, Quad other, double dx, double dy) {
        double length = Math.sqrt(dx * dx + dy * dy);
        if (length < TOUCH) {
            return false;
        }
        double touch = TOUCH * length;
        return greatest(one, dx, dy) <= least(other, dx, dy) + touch
                || greatest(other, dx, dy) <= least(one, dx, dy) + touch;
    }

    private static double least(Quad quad, double dx, double dy) {
        return -greatest(quad, -dx, -dy);
    }

    /** How far the quad reaches in a direction, as a multiple of the direction's length. */
    private static double greatest(Quad quad, double dx, double dy) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (Spot corner : quad.corners) {
            greatest = Math.max(greatest, corner.x() * dx + corner.y() * dy);
        }
        return greatest;
    }
}
