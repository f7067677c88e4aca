package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;

/** Cuts lines and areas off at the edges of a box. */
public record Window(Box box) {
    /** One of the four sides: which spots are inside it, and where a line crosses it. */
    private enum Side {
        LEFT,
        RIGHT,
        TOP,
        BOTTOM;

        boolean keeps(Spot spot, Box box) {
            return switch (this) {
                case LEFT -> spot.x() >= box.left();
                case RIGHT -> spot.x() <= box.right();
                case TOP -> spot.y() >= box.top();
                case BOTTOM -> spot.y() <= box.bottom();
            };
        }

        Spot crossing(Spot a, Spot b, Box box) {
            double share = switch (this) {
                case LEFT -> (box.left() - a.x()) / (b.x() - a.x());
                case RIGHT -> (box.right() - a.x()) / (b.x() - a.x());
                case TOP -> (box.top() - a.y()) / (b.y() - a.y());
                case BOTTOM -> (box.bottom() - a.y()) / (b.y() - a.y());
            };
            return Spot.of(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
        }
    }

    /** The part of a closed area inside the box; empty when none is. */
    public List<Spot> area(List<Spot> corners) {
        List<Spot> kept = corners;
        for (Side side : Side.values()) {
            kept = keptBy(side, kept);
        }
        return kept.size() < 3 ? List.of() : kept;
    }

    private List<Spot> keptBy(Side side, List<Spot> corners) {
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            if (side.keeps(a, box)) {
                kept.add(a);
            }
            if (side.keeps(a, box) != side.keeps(b, box)) {
                kept.add(side.crossing(a, b, box));
            }
        }
        return kept;
    }

    /** The stretches of an open line inside the box. */
    public List<List<Spot>> line(List<Spot> spots) {
        List<List<Spot>> stretches = new ArrayList<>();
        List<Spot> current = new ArrayList<>();
        for (int i = 1; i < spots.size(); i++) {
            List<Spot> piece = piece(spots.get(i - 1), spots.get(i));
            if (piece.isEmpty()) {
                continue;
            }
            boolean joins =
                    !current.isEmpty() && current.get(current.size() - 1).equals(piece.get(0));
            if (!joins) {
                current = new ArrayList<>(piece.subList(0, 1));
                stretches.add(current);
            }
            current.add(piece.get(1));
        }
        return stretches;
    }

    /** The stretches of a closed line inside the box. */
    public List<List<Spot>> edges(List<Spot> corners) {
        List<Spot> round = new ArrayList<>(corners);
        round.add(corners.get(0));
        return line(round);
    }

    private List<Spot> piece(Spot from, Spot to) {
        Spot a = from;
        Spot b = to;
        for (Side side : Side.values()) {
            boolean keepsA = side.keeps(a, box);
            boolean keepsB = side.keeps(b, box);
            if (!keepsA && !keepsB) {
                return List.of();
            }
            if (keepsA != keepsB) {
                Spot crossing = side.crossing(a, b, box);
                a = keepsA ? a : crossing;
                b = keepsB ? b : crossing;
            }
        }
        return a.equals(b) ? List.of() : List.of(a, b);
    }
}
