package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.sheet.Pen;
import pitchboard.sheet.drafting.Material;

/** How the things are measured that somebody has to go and look at. */
final class LookLessons {
    private static final String SEEN = "measured > looked at";
    private static final double SOIL = 17;

    private LookLessons() {}

    static List<Lesson> all() {
        return List.of(floorEdge(), lining(), sill(), aboveSoil(), footing(), frost());
    }

    private static Lesson floorEdge() {
        Scene scene = new Scene("How far the floor above stands in over the treads, seen along the stair")
                .wood(6, 17, 24, 18.4)
                .wood(9, 18.4, 10.4, 22)
                .wood(19.6, 18.4, 21, 22)
                .block(Material.TIMBER_ACROSS, 0.6, 4, 9.5, 6)
                .line(Pen.THIN, 6, 7, 6, 16)
                .line(Pen.THIN, 9.5, 6, 9.5, 11)
                .tape(6, 10, 9.5, 10);
        return lesson("floor edge over treads", scene);
    }

    private static Lesson lining() {
        Scene scene = new Scene("The thickness of the boards that line the space below the stair")
                .wood(4, 4, 26, 10)
                .block(Material.TIMBER_ACROSS, 4, 10, 26, 13)
                .pinch(22, 10, 22, 13);
        return lesson("lining below", scene);
    }

    private static Lesson sill() {
        Scene scene = new Scene("Plumb from the top of the sill down to the landing")
                .ground(2, 17, Scene.RIGHT, 17)
                .block(Material.TIMBER_ACROSS, 20, 12, 25, 17)
                .line(Pen.HIDDEN, 22.5, 12, 22.5, 1.5)
                .line(Pen.THIN, 20, 12, 13, 12)
                .tape(15, 12, 15, 17);
        return lesson("sill above landing", scene);
    }

    /** A pad in the soil, with the foot of a stair on it. */
    private static Scene pad(String title, double bottom) {
        return new Scene(title)
                .ground(Scene.LEFT, SOIL, 8, SOIL)
                .ground(24, SOIL, Scene.RIGHT, SOIL)
                .block(Material.CONCRETE, 8, 13, 24, bottom);
    }

    private static Lesson aboveSoil() {
        Scene scene = pad("Plumb from the soil up to the wood on the concrete", 21)
                .wood(12, 7, 24, 13)
                .line(Pen.THIN, 12, 13, 4, 13)
                .tape(5.5, 13, 5.5, SOIL);
        return lesson("wood above soil", scene);
    }

    private static Lesson footing() {
        Scene scene = pad("From undisturbed ground down to the underside of the concrete", 22)
                .line(Pen.THIN, 24, 22, 28.5, 22)
                .tape(26.5, SOIL, 26.5, 22);
        return lesson("footing depth", scene);
    }

    private static Lesson frost() {
        Scene scene = pad("How deep the ground freezes here: ask the building office", 21.5)
                .line(Pen.CENTRE, Scene.LEFT, 20.5, Scene.RIGHT, 20.5)
                .tape(4, SOIL, 4, 20.5);
        return lesson("frost depth", scene);
    }

    private static Lesson lesson(String line, Scene scene) {
        return Lesson.of(SEEN + " > " + line, scene.canvas());
    }
}
