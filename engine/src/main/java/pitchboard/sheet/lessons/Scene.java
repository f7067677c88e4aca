package pitchboard.sheet.lessons;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Hatch;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.pictures.Canvas;

/** A building site in a few strokes, put together piece by piece; places in millimetres on the picture. */
final class Scene {
    static final double LEFT = 0.6;
    static final double RIGHT = 29.4;
    /** Where the surfaces and the header's face are, unless a lesson needs them elsewhere. */
    static final double GROUND = 20;

    static final double FLOOR = 6;
    static final double FACE = 23;

    private final Canvas canvas;

    Scene(String title) {
        this.canvas = Lesson.canvas(title);
    }

    Canvas canvas() {
        return canvas;
    }

    private Pencil pencil() {
        return canvas.pencil();
    }

    private static List<Spot> corners(double left, double top, double right, double bottom) {
        return new Box(left, top, right - left, bottom - top).corners();
    }

    /** Floor on its header above, ground below. */
    Scene site() {
        return floor(FACE, FLOOR).ground(GROUND, GROUND);
    }

    /** Ground from the left edge to the right, straight between these heights. */
    Scene ground(double leftHeight, double rightHeight) {
        return ground(LEFT, leftHeight, RIGHT, rightHeight);
    }

    Scene ground(double left, double leftHeight, double right, double rightHeight) {
        canvas.part("ground", () -> {
            double low = Math.min(23.4, Math.max(leftHeight, rightHeight) + 2.6);
            Spot from = Spot.of(left, leftHeight);
            Spot to = Spot.of(right, rightHeight);
            new Hatch(pencil()).inside(List.of(from, to, Spot.of(right, low), Spot.of(left, low)), Material.GROUND);
            pencil().line(Pen.CUT, from, to);
        });
        return this;
    }

    Scene floor(double face, double top) {
        return header(face, top + 1.2, top + 6.4, 2).decking(face, top, 1.2);
    }

    Scene header(double face, double top, double bottom, double thick) {
        canvas.part("header", () -> {
            List<Spot> corners = corners(face, top, face + thick, bottom);
            new Hatch(pencil()).inside(corners, Material.TIMBER_ACROSS);
            pencil().outline(Pen.CUT, corners);
        });
        return this;
    }

    Scene decking(double edge, double top, double thick) {
        canvas.part("floor", () -> pencil().outline(Pen.OUTLINE, Fill.WHITE, corners(edge, top, RIGHT, top + thick)));
        return this;
    }

    /** Something else that is there: a wall, a beam, a layer. */
    Scene block(Material material, double left, double top, double right, double bottom) {
        canvas.part("around", () -> {
            new Hatch(pencil()).inside(corners(left, top, right, bottom), material);
            pencil().outline(Pen.OUTLINE, corners(left, top, right, bottom));
        });
        return this;
    }

    /** A board or a piece of the stair. */
    Scene wood(double left, double top, double right, double bottom) {
        canvas.part("T", () -> pencil().outline(Pen.OUTLINE, Fill.WHITE, corners(left, top, right, bottom)));
        return this;
    }

    /** The same seen behind something or still to come. */
    Scene later(double left, double top, double right, double bottom) {
        canvas.part("later", () -> pencil().outline(Pen.GHOST, Fill.SHADE, corners(left, top, right, bottom)));
        return this;
    }

    Scene line(Pen pen, double... places) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i + 1 < places.length; i += 2) {
            spots.add(Spot.of(places[i], places[i + 1]));
        }
        canvas.plain(() -> pencil().line(pen, spots));
        return this;
    }

    /** The steps that will stand here, only hinted at, from the face of the header down to the ground. */
    Scene hintOfSteps(double foot, int steps) {
        List<Spot> spots = new ArrayList<>();
        double run = (FACE - foot) / (steps - 1);
        double rise = (GROUND - FLOOR) / steps;
        for (int i = 0; i < steps; i++) {
            spots.add(Spot.of(foot + i * run, GROUND - i * rise));
            spots.add(Spot.of(foot + i * run, GROUND - (i + 1) * rise));
        }
        canvas.plain(() -> pencil().line(Pen.HIDDEN, spots));
        return this;
    }

    /** A spirit level whose underside lies on this height. */
    Scene level(double left, double right, double height) {
        canvas.part("level", () -> {
            pencil().outline(Pen.OUTLINE, Fill.WHITE, corners(left, height - 1.7, right, height));
            Spot middle = Spot.of((left + right) / 2, height - 0.85);
            pencil().outline(Pen.THIN, corners(middle.x() - 1.2, middle.y() - 0.5, middle.x() + 1.2, middle.y() + 0.5));
            pencil().dot(Fill.BLACK, middle, 0.38);
        });
        return this;
    }

    /** A plumb line with its bob just over this height. */
    Scene plumb(double x, double from, double to) {
        canvas.part("plumb", () -> {
            pencil().line(Pen.THIN, Spot.of(x, from), Spot.of(x, to - 1.8));
            pencil().fill(Fill.BLACK, List.of(Spot.of(x, to), Spot.of(x - 0.6, to - 1.8), Spot.of(x + 0.6, to - 1.8)));
        });
        return this;
    }

    /** The tape from one place to the other. */
    Scene tape(double x1, double y1, double x2, double y2) {
        new Taping(canvas).between(Spot.of(x1, y1), Spot.of(x2, y2));
        return this;
    }

    Scene pinch(double x1, double y1, double x2, double y2) {
        new Taping(canvas).pinch(Spot.of(x1, y1), Spot.of(x2, y2));
        return this;
    }
}
