package pitchboard.sheet;

import java.util.List;

/** An upright rectangle on paper, in millimetres. Layouts are made by cutting boxes off boxes. */
public record Box(double left, double top, double width, double height) {
    public Box {
        left = Spot.settled(left);
        top = Spot.settled(top);
        width = Spot.settled(width);
        height = Spot.settled(height);
        if (!(width >= 0 && height >= 0)) {
            throw new IllegalArgumentException("a box of " + width + " by " + height + " mm");
        }
    }

    /** The smallest box around the spots. */
    public static Box around(List<Spot> spots) {
        double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow();
        double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow();
        double top = spots.stream().mapToDouble(Spot::y).min().orElseThrow();
        double bottom = spots.stream().mapToDouble(Spot::y).max().orElseThrow();
        return new Box(left, top, right - left, bottom - top);
    }

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height;
    }

    public Spot topLeft() {
        return new Spot(left, top);
    }

    public Spot centre() {
        return new Spot(left + width / 2, top + height / 2);
    }

    public List<Spot> corners() {
        return List.of(
                new Spot(left, top), new Spot(right(), top), new Spot(right(), bottom()), new Spot(left, bottom()));
    }

    /** Smaller by this much on every side; larger when negative. */
    public Box inset(double by) {
        return inset(by, by);
    }

    public Box inset(double across, double down) {
        return new Box(left + across, top + down, width - 2 * across, height - 2 * down);
    }

    public Box leftPart(double part) {
        return new Box(left, top, part, height);
    }

    public Box rightPart(double part) {
        return new Box(right() - part, top, part, height);
    }

    public Box topPart(double part) {
        return new Box(left, top, width, part);
    }

    public Box bottomPart(double part) {
        return new Box(left, bottom() - part, width, part);
    }

    public Box withoutLeft(double part) {
        return rightPart(width - part);
    }

    public Box withoutRight(double part) {
        return leftPart(width - part);
    }

    public Box withoutTop(double part) {
        return bottomPart(height - part);
    }

    public Box withoutBottom(double part) {
        return topPart(height - part);
    }

    public boolean contains(Spot spot) {
        return spot.x() >= left && spot.x() <= right() && spot.y() >= top && spot.y() <= bottom();
    }

    public boolean contains(Box other) {
        return other.left >= left && other.right() <= right() && other.top >= top && other.bottom() <= bottom();
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(Box other) {
        return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
    }
}
