package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Material;

/** How the rise is measured, and what finishes still to come do to it. */
final class RiseLessons {
    private RiseLessons() {}

    static List<Lesson> all() {
        return List.of(
                rise("measured > rise"),
                levelLine("measured > level line"),
                levelLine("measured > level line > readings"),
                out(),
                down(),
                finishAbove(),
                finishBelow());
    }

    private static Lesson rise(String field) {
        Scene scene = new Scene("Plumb down from a level that lies on the upper surface")
                .site()
                .level(6, 27, Scene.FLOOR)
                .tape(9, Scene.FLOOR, 9, Scene.GROUND);
        return Lesson.of(field, scene.canvas());
    }

    private static Scene bank(String title) {
        return new Scene(title)
                .floor(Scene.FACE, Scene.FLOOR)
                .ground(21, 16)
                .line(Pen.CENTRE, 1, Scene.FLOOR, Scene.FACE, Scene.FLOOR);
    }

    private static Lesson levelLine(String field) {
        Scene scene = bank("Readings down to the ground from a level line")
                .tape(18, Scene.FLOOR, 18, 17.9)
                .tape(11, Scene.FLOOR, 11, 19.1)
                .tape(4, Scene.FLOOR, 4, 20.3);
        return Lesson.of(field, scene.canvas());
    }

    private static Lesson out() {
        Scene scene = bank("Level from the face of the header out to a reading")
                .line(Pen.THIN, 9, Scene.FLOOR, 9, 19.5)
                .line(Pen.THIN, Scene.FACE, Scene.FLOOR, Scene.FACE, 2)
                .line(Pen.THIN, 9, Scene.FLOOR, 9, 2)
                .tape(Scene.FACE, 3.4, 9, 3.4);
        return Lesson.of("measured > level line > readings > out", scene.canvas());
    }

    private static Lesson down() {
        Scene scene = bank("Plumb from the level line down to the ground").tape(9, Scene.FLOOR, 9, 19.4);
        return Lesson.of("measured > level line > readings > down", scene.canvas());
    }

    private static Lesson finishAbove() {
        Scene scene = new Scene("The thickness that will lie on the upper surface")
                .header(15, 14, 23.4, 4)
                .decking(15, 11, 3)
                .later(15, 8, Scene.RIGHT, 11)
                .pinch(9, 8, 9, 11)
                .line(Pen.THIN, 7.5, 11, 15, 11)
                .line(Pen.THIN, 7.5, 8, 15, 8);
        return Lesson.of("measured > finish to come above", scene.canvas());
    }

    private static Lesson finishBelow() {
        Scene scene = new Scene("The thickness that will lie where the foot stands")
                .block(Material.CONCRETE, Scene.LEFT, 16, Scene.RIGHT, 22)
                .later(Scene.LEFT, 13, Scene.RIGHT, 16)
                .pinch(9, 13, 9, 16);
        return Lesson.of("measured > finish to come below", scene.canvas());
    }
}
