package pitchboard.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pitchboard.measure.Length;

/** A closed outline; the last corner joins the first. No corner stands twice in a row. */
public record Outline(List<Point> corners) {
    public Outline {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("an outline needs three corners, got " + corners.size());
        }
    }

    /** The outline through these corners, leaving out a corner that repeats the one before it. */
    public static Outline through(List<Point> corners) {
        List<Point> kept = new ArrayList<>();
        for (Point corner : corners) {
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(corner)) {
                kept.add(corner);
            }
        }
        if (kept.size() > 1 && kept.get(0).equals(kept.get(kept.size() - 1))) {
            kept.remove(kept.size() - 1);
        }
        return new Outline(kept);
    }

    public Length least(Function<Point, Length> coordinate) {
        return corners.stream().map(coordinate).reduce(Length::min).orElseThrow();
    }

    public Length greatest(Function<Point, Length> coordinate) {
        return corners.stream().map(coordinate).reduce(Length::max).orElseThrow();
    }

    public Outline mapped(Function<Point, Point> move) {
        return new Outline(corners.stream().map(move).toList());
    }
}
