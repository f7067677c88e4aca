package pitchboard.sheet.lessons;

import java.util.List;
import java.util.function.UnaryOperator;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Material;

/** How the space is measured that the flight may take, along and above it. */
final class SpaceLessons {
    private static final double WALL = 4;
    private static final double NEAR = 15;
    private static final double FAR = 9;
    private static final double UNDERSIDE = 4.6;

    private SpaceLessons() {}

    static List<Lesson> all() {
        UnaryOperator<Scene> underside = scene -> scene.tape(12, UNDERSIDE, 12, Scene.GROUND);
        return List.of(
                run("measured > run available"),
                overhead("measured > overhead", "What is above the flight, and how high", underside),
                overhead("measured > overhead > underside", "Plumb from the ground to the underside", underside),
                overhead(
                        "measured > overhead > from",
                        "Level from the face of the header to where it begins",
                        scene -> away(scene, NEAR)),
                overhead(
                        "measured > overhead > to",
                        "Level from the face of the header to where it ends",
                        scene -> away(scene, FAR)));
    }

    private static Lesson run(String field) {
        Scene scene = new Scene("Level from under the face of the header to what is in the way")
                .floor(Scene.FACE, Scene.FLOOR)
                .block(Material.TIMBER_ACROSS, 1.5, 8, WALL, Scene.GROUND)
                .ground(Scene.GROUND, Scene.GROUND)
                .hintOfSteps(8, 5)
                .plumb(Scene.FACE, Scene.FLOOR + 7.6, Scene.GROUND)
                .tape(Scene.FACE, 18, WALL, 18);
        return Lesson.of(field, scene.canvas());
    }

    private static Lesson overhead(String field, String title, UnaryOperator<Scene> measure) {
        Scene scene = new Scene(title)
                .floor(Scene.FACE, 8)
                .ground(Scene.GROUND, Scene.GROUND)
                .block(Material.TIMBER_ACROSS, FAR, 1, NEAR, UNDERSIDE);
        return Lesson.of(field, measure.apply(scene).canvas());
    }

    private static Scene away(Scene scene, double edge) {
        return scene.line(Pen.THIN, Scene.FACE, 8, Scene.FACE, 4.5)
                .line(Pen.THIN, edge, UNDERSIDE, edge, 7.6)
                .tape(Scene.FACE, 6.2, edge, 6.2);
    }
}
