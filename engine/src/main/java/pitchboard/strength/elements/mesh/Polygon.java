package pitchboard.strength.elements.mesh;

import java.util.ArrayList;
import java.util.List;

/** A closed outline, counterclockwise whichever way it was given; the last corner joins the first. */
public record Polygon(List<Xy> corners) {
    /** Two places nearer than this, in mm, are one. */
    public static final double NEAR_MM = 1e-6;

    public Polygon {
        corners = List.copyOf(doubleArea(corners) < 0 ? backwards(corners) : corners);
    }

    private static List<Xy> backwards(List<Xy> corners) {
        List<Xy> turned = new ArrayList<>();
        for (int i = corners.size() - 1; i >= 0; i--) {
            turned.add(corners.get(i));
        }
        return turned;
    }

    private static double doubleArea(List<Xy> corners) {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Xy a = corners.get(i);
            Xy b = corners.get((i + 1) % corners.size());
            sum += a.x() * b.y() - b.x() * a.y();
        }
        return sum;
    }

    /** In mm². */
    public double area() {
        return doubleArea(corners) / 2;
    }

    public int size() {
        return corners.size();
    }

    public Xy corner(int index) {
        return corners.get(Math.floorMod(index, corners.size()));
    }

    /** What keeps this from being an outline that can be meshed, in plain words; empty when nothing does. */
    public List<String> troubles() {
        List<String> troubles = new ArrayList<>();
        if (corners.size() < 3) {
            troubles.add("the outline needs three corners, got " + corners.size());
            return troubles;
        }
        for (int i = 0; i < size(); i++) {
            Xy a = corner(i);
            if (!(Math.abs(a.x()) < 1e6 && Math.abs(a.y()) < 1e6)) {
                troubles.add("corner " + (i + 1) + " of the outline is not within a kilometre: " + a);
            } else if (a.distanceTo(corner(i + 1)) < NEAR_MM) {
                troubles.add("corner " + (i + 1) + " of the outline stands twice: " + a);
            }
        }
        if (troubles.isEmpty()) {
            addCrossings(troubles);
        }
        return troubles;
    }

    private void addCrossings(List<String> troubles) {
        for (int i = 0; i < size(); i++) {
            for (int j = i + 1; j < size(); j++) {
                if (meets(i, j)) {
                    troubles.add("side " + (i + 1) + " of the outline meets side " + (j + 1));
                }
            }
        }
    }

    /** Whether two sides share more than the corner that joins them. */
    private boolean meets(int i, int j) {
        Xy a = corner(i);
        Xy b = corner(i + 1);
        Xy c = corner(j);
        Xy d = corner(j + 1);
        if (j == i + 1) {
            return foldsBack(a, b, d);
        }
        if (i == 0 && j == size() - 1) {
            return foldsBack(c, a, b);
        }
        return Predicates.turn(a, b, c) * Predicates.turn(a, b, d) <= 0
                && Predicates.turn(c, d, a) * Predicates.turn(c, d, b) <= 0
                && boxesMeet(a, b, c, d);
    }

    private static boolean foldsBack(Xy a, Xy b, Xy c) {
        double forward = (b.x() - a.x()) * (c.x() - b.x()) + (b.y() - a.y()) * (c.y() - b.y());
        return Predicates.turn(a, b, c) == 0 && forward < 0;
    }

    private static boolean boxesMeet(Xy a, Xy b, Xy c, Xy d) {
        return Math.min(a.x(), b.x()) <= Math.max(c.x(), d.x())
                && Math.min(c.x(), d.x()) <= Math.max(a.x(), b.x())
                && Math.min(a.y(), b.y()) <= Math.max(c.y(), d.y())
                && Math.min(c.y(), d.y()) <= Math.max(a.y(), b.y());
    }

    /** The corners that are cut into the wood: more than a half turn of it stands around them. */
    public List<Xy> inwardCorners() {
        List<Xy> inward = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            Xy a = corner(i - 1);
            Xy b = corner(i);
            Xy c = corner(i + 1);
            double cross = (b.x() - a.x()) * (c.y() - b.y()) - (b.y() - a.y()) * (c.x() - b.x());
            if (cross < -1e-3 * a.distanceTo(b) * b.distanceTo(c)) {
                inward.add(b);
            }
        }
        return inward;
    }

    /**
     * The same outline with one more corner on it; itself where a corner already stands there.
     *
     * @throws IllegalArgumentException when the place is not on the outline
     */
    public Polygon withCorner(Xy place) {
        for (Xy corner : corners) {
            if (corner.distanceTo(place) < NEAR_MM) {
                return this;
            }
        }
        for (int i = 0; i < size(); i++) {
            if (isOn(place, corner(i), corner(i + 1))) {
                List<Xy> more = new ArrayList<>(corners);
                more.add(i + 1, place);
                return new Polygon(more);
            }
        }
        throw new IllegalArgumentException(place + " is not on the outline");
    }

    /** Whether a place is on the outline, to a millionth of a millimetre. */
    public boolean has(Xy place) {
        for (int i = 0; i < size(); i++) {
            if (isOn(place, corner(i), corner(i + 1))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a place lies on the straight piece between two others, ends included, to {@link #NEAR_MM}. */
    public static boolean isOn(Xy place, Xy from, Xy to) {
        double length = from.distanceTo(to);
        double along =
                ((place.x() - from.x()) * (to.x() - from.x()) + (place.y() - from.y()) * (to.y() - from.y())) / length;
        double off =
                ((place.x() - from.x()) * (to.y() - from.y()) - (place.y() - from.y()) * (to.x() - from.x())) / length;
        return Math.abs(off) < NEAR_MM && along > -NEAR_MM && along < length + NEAR_MM;
    }
}
