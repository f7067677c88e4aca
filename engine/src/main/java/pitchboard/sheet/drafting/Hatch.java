package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;

/** Hatches closed outlines, clipped to them; outlines may be notched. */
public final class Hatch {
    private final Pencil pencil;

    public Hatch(Pencil pencil) {
        this.pencil = pencil;
    }

    /** Hatches level timber, concrete or ground. */
    public void inside(List<Spot> corners, Material material) {
        inside(corners, material, 0);
    }

    /**
     * Hatches timber that lies in a direction.
     *
     * @param grain direction of the grain in degrees; concrete has none
     */
    public void inside(List<Spot> corners, Material material, double grain) {
        switch (material) {
            case TIMBER_ACROSS -> lines(corners, grain + 45, List.of(1.8));
            case TIMBER_ALONG -> lines(corners, grain, List.of(2.6, 1.5, 2.1));
            case GROUND -> lines(corners, grain + 45, List.of(0.9, 0.9, 4.2));
            case CONCRETE -> stones(corners);
        }
    }

    /** Parallel lines in a direction, at spacings that repeat. */
    private void lines(List<Spot> corners, double direction, List<Double> spacings) {
        Spot centre = Box.around(corners).centre();
        double reach = reach(corners, centre);
        double off = -reach;
        for (int i = 0; off < reach; i++) {
            off += spacings.get(i % spacings.size());
            stretches(corners, centre.toward(direction + 90, off), direction);
        }
    }

    private static double reach(List<Spot> corners, Spot centre) {
        return corners.stream().mapToDouble(centre::distanceTo).max().orElse(0);
    }

    /** Draws the stretches of one line that are inside the outline. */
    private void stretches(List<Spot> corners, Spot through, double direction) {
        List<Double> crossings = new ArrayList<>();
        DimensionLine line = new DimensionLine(through, direction);
        DimensionLine square = new DimensionLine(through, direction + 90);
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            double sideA = square.along(a);
            double sideB = square.along(b);
            if (sideA < 0 != sideB < 0) {
                double share = sideA / (sideA - sideB);
                crossings.add(line.along(a) + share * (line.along(b) - line.along(a)));
            }
        }
        Collections.sort(crossings);
        for (int i = 1; i < crossings.size(); i += 2) {
            pencil.line(
                    Pen.THIN,
                    through.toward(direction, crossings.get(i - 1)),
                    through.toward(direction, crossings.get(i)));
        }
    }

    /** Dots and small triangles in a pattern that repeats without looking as if it did. */
    private void stones(List<Spot> corners) {
        Box box = Box.around(corners);
        int column = 0;
        for (double x = box.left() + 0.8; x < box.right(); x += 2.3) {
            int row = 0;
            for (double y = box.top() + 0.8; y < box.bottom(); y += 2.3) {
                int kind = (column * 7 + row * 11 + column * row * 3) % 9;
                Spot spot = Spot.of(x + kind % 3 * 0.5, y + kind % 4 * 0.35);
                if (isInside(corners, spot)) {
                    stone(spot, kind);
                }
                row++;
            }
            column++;
        }
    }

    private void stone(Spot spot, int kind) {
        if (kind == 4) {
            pencil.outline(Pen.THIN, List.of(spot.toward(90, 0.7), spot.toward(210, 0.7), spot.toward(330, 0.7)));
        } else if (kind != 7) {
            pencil.dot(Fill.BLACK, spot, 0.13);
        }
    }

    /** Whether a spot is inside a closed outline, by counting the edges to its right. */
    static boolean isInside(List<Spot> corners, Spot spot) {
        boolean inside = false;
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            if (a.y() > spot.y() != b.y() > spot.y()) {
                double crossing = a.x() + (spot.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                inside ^= spot.x() < crossing;
            }
        }
        return inside;
    }
}
