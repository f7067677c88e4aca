package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Material;

/** What is seen by someone who stands before the flight: its width, what is beside it, and rails. */
final class AcrossLessons {
    private static final double LEFT = 8;
    private static final double RIGHT = 22;
    private static final double GROUND = 20;
    private static final double RISE = 3.5;

    private AcrossLessons() {}

    static List<Lesson> all() {
        return List.of(
                lesson("wanted > width", front("The length of the treads").tape(LEFT, 3.5, RIGHT, 3.5)),
                lesson(
                        "wanted > clear width",
                        railed("What is free to walk in, above the rails").tape(LEFT + 1.6, 2.4, RIGHT - 1.6, 2.4)),
                choice("measured > left side", "open", front("Nothing on the left")),
                choice("measured > left side", "wall", walled(front("A wall on the left"), 4.6, LEFT - 0.4)),
                choice("measured > right side", "open", front("Nothing on the right")),
                choice("measured > right side", "wall", walled(front("A wall on the right"), RIGHT + 0.4, 25.4)),
                fallBeside(),
                lesson(
                        "wanted > stringers > tread overhang",
                        open("From the outer stringer to the end of the treads")
                                .line(Pen.THIN, LEFT, GROUND - 4 * RISE, LEFT, 2)
                                .line(Pen.THIN, LEFT + 2.4, GROUND - 4 * RISE, LEFT + 2.4, 2)
                                .pinch(LEFT, 3.4, LEFT + 2.4, 3.4)),
                choice("wanted > handrail > sides", "left", rail(front("A rail on the left"), LEFT + 0.6)),
                choice("wanted > handrail > sides", "right", rail(front("A rail on the right"), RIGHT - 0.6)),
                choice("wanted > handrail > sides", "both", railed("A rail on both sides")),
                choice("wanted > handrail > sides", "none", front("No rail")));
    }

    private static Lesson lesson(String field, Scene scene) {
        return Lesson.of(field, scene.canvas());
    }

    private static Lesson choice(String field, String word, Scene scene) {
        return Lesson.of(field, word, scene.canvas());
    }

    /** Four steps, one above and behind another. */
    private static Scene front(String title) {
        Scene scene = new Scene(title);
        for (int step = 4; step >= 1; step--) {
            double top = GROUND - step * RISE;
            scene.wood(LEFT + 0.6, top, RIGHT - 0.6, top + RISE).wood(LEFT, top, RIGHT, top + 0.9);
        }
        return scene.ground(GROUND, GROUND);
    }

    /** The same without risers, so that the stringers are seen. */
    private static Scene open(String title) {
        Scene scene = new Scene(title);
        for (double x : List.of(LEFT + 2.4, RIGHT - 3.4)) {
            scene.wood(x, GROUND - 4 * RISE + 0.9, x + 1, GROUND);
        }
        for (int step = 4; step >= 1; step--) {
            scene.wood(LEFT, GROUND - step * RISE, RIGHT, GROUND - step * RISE + 0.9);
        }
        return scene.ground(GROUND, GROUND);
    }

    private static Scene walled(Scene scene, double left, double right) {
        return scene.block(Material.TIMBER_ACROSS, left, 1, right, GROUND);
    }

    private static Scene rail(Scene scene, double x) {
        return scene.line(Pen.OUTLINE, x, GROUND - RISE * 4, x, 4.5).wood(x - 0.7, 3.8, x + 0.7, 5);
    }

    private static Scene railed(String title) {
        return rail(rail(front(title), LEFT + 0.6), RIGHT - 0.6);
    }

    private static Lesson fallBeside() {
        double low = 22.4;
        Scene scene = new Scene("How much lower the ground beside the flight is");
        for (int step = 3; step >= 1; step--) {
            double top = 17 - step * RISE;
            scene.wood(12.6, top, 25.4, top + RISE).wood(12, top, 26, top + 0.9);
        }
        scene.ground(10, 17, Scene.RIGHT, 17)
                .line(Pen.CUT, 10, 17, 8.5, low, Scene.LEFT, low)
                .line(Pen.CENTRE, 10, 17, 1.5, 17)
                .tape(4, 17, 4, low);
        return Lesson.of("measured > ground beside is lower by", scene.canvas());
    }
}
