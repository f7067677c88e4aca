package pitchboard.sheet.tiling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.sheet.Box;
import pitchboard.sheet.Spot;

/** Cuts lines and areas off at the edges of an upright box. */
public final class Clip {
    private final Box box;

    public Clip(Box box) {
        this.box = box;
    }

    /** The stretches of an open line that are inside, each as long as it can be. */
    public List<List<Spot>> line(List<Spot> spots) {
        List<List<Spot>> pieces = new ArrayList<>();
        List<Spot> piece = new ArrayList<>();
        for (int i = 1; i < spots.size(); i++) {
            Optional<List<Spot>> inside = stroke(spots.get(i - 1), spots.get(i));
            if (inside.isPresent()) {
                if (!piece.isEmpty()
                        && !piece.get(piece.size() - 1).equals(inside.get().get(0))) {
                    pieces.add(piece);
                    piece = new ArrayList<>();
                }
                if (piece.isEmpty()) {
                    piece.add(inside.get().get(0));
                }
                piece.add(inside.get().get(1));
            }
        }
        if (!piece.isEmpty()) {
            pieces.add(piece);
        }
        return pieces;
    }

    /** The part of one straight stroke that is inside (Liang and Barsky's way: a share of the stroke for each edge). */
    private Optional<List<Spot>> stroke(Spot a, Spot b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] toward = {-dx, dx, -dy, dy};
        double[] room = {a.x() - box.left(), box.right() - a.x(), a.y() - box.top(), box.bottom() - a.y()};
        double enter = 0;
        double leave = 1;
        for (int edge = 0; edge < 4; edge++) {
            if (toward[edge] == 0) {
                if (room[edge] < 0) {
                    return Optional.empty();
                }
            } else if (toward[edge] < 0) {
                enter = Math.max(enter, room[edge] / toward[edge]);
            } else {
                leave = Math.min(leave, room[edge] / toward[edge]);
            }
        }
        return enter < leave
                ? Optional.of(List.of(a.shifted(enter * dx, enter * dy), a.shifted(leave * dx, leave * dy)))
                : Optional.empty();
    }

    /** The stretches of a closed line that are inside. */
    public List<List<Spot>> edges(List<Spot> corners) {
        List<Spot> round = new ArrayList<>(corners);
        round.add(corners.get(0));
        return line(round);
    }

    /** The part of an area that is inside; empty when none is (Sutherland and Hodgman's way: one edge at a time). */
    public List<Spot> area(List<Spot> corners) {
        List<Spot> kept = corners;
        for (int edge = 0; edge < 4; edge++) {
            kept = behind(kept, edge);
        }
        return kept;
    }

    private List<Spot> behind(List<Spot> corners, int edge) {
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot from = corners.get(i);
            Spot to = corners.get((i + 1) % corners.size());
            double depthFrom = depth(from, edge);
            double depthTo = depth(to, edge);
            if (depthFrom >= 0) {
                kept.add(from);
            }
            if (depthFrom < 0 != depthTo < 0) {
                double share = depthFrom / (depthFrom - depthTo);
                kept.add(from.shifted(share * (to.x() - from.x()), share * (to.y() - from.y())));
            }
        }
        return kept;
    }

    /** How far a spot is inside one edge: left, right, top, bottom. */
    private double depth(Spot spot, int edge) {
        return switch (edge) {
            case 0 -> spot.x() - box.left();
            case 1 -> box.right() - spot.x();
            case 2 -> spot.y() - box.top();
            default -> box.bottom() - spot.y();
        };
    }
}
