package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Material;

/** How the level places at both ends are measured, seen from the side and, for widths and doors, from above. */
final class LandingLessons {
    private static final String ABOVE = "measured > landing above";
    private static final String BELOW = "measured > landing below";
    /** From above: the flight lies on the left, the landing beside it; or the other way round at the foot. */
    private static final double MEET = 11;

    private static final double FAR = 22;
    private static final double HINGE = 15.5;
    private static final double LEAF = 6;
    private static final double TOP = 5;
    private static final double BOTTOM = 19;

    private LandingLessons() {}

    static List<Lesson> all() {
        return List.of(
                depthAbove(ABOVE),
                depthAbove(ABOVE + " > depth"),
                fallAbove(),
                width(ABOVE),
                door(ABOVE, "none"),
                door(ABOVE, "swings away"),
                door(ABOVE, "swings over the stair"),
                clearOfDoor(ABOVE),
                depthBelow(BELOW),
                depthBelow(BELOW + " > depth"),
                fallBelow(),
                width(BELOW),
                door(BELOW, "none"),
                door(BELOW, "swings away"),
                door(BELOW, "swings over the stair"),
                clearOfDoor(BELOW));
    }

    private static Lesson depthAbove(String field) {
        Scene scene = new Scene("Level from the head of the stair to the wall")
                .header(8, 13.2, 20, 2)
                .decking(8, 12, 1.2)
                .block(Material.TIMBER_ACROSS, 26, 2, 28.5, 12)
                .line(Pen.HIDDEN, 8, 15, 5, 15, 5, 18, 2, 18, 2, 21)
                .tape(8, 9, 26, 9)
                .line(Pen.THIN, 8, 12, 8, 7.5);
        return Lesson.of(field, scene.canvas());
    }

    private static Lesson depthBelow(String field) {
        Scene scene = new Scene("Level from the foot of the stair to what is in the way")
                .ground(18, 18)
                .block(Material.TIMBER_ACROSS, 1.5, 6, 4, 18)
                .line(Pen.HIDDEN, 21, 18, 21, 14.5, 24, 14.5, 24, 11, 27, 11, 27, 7.5)
                .tape(4, 15, 21, 15);
        return Lesson.of(field, scene.canvas());
    }

    private static Lesson fallAbove() {
        Scene scene = new Scene("The gap under a level that lies on the landing")
                .ground(6, 15, Scene.RIGHT, 18.5)
                .level(6, 28, 15)
                .line(Pen.HIDDEN, 6, 15, 6, 18, 3, 18, 3, 21)
                .pinch(27, 15, 27, 18.2);
        return Lesson.of(ABOVE + " > fall", scene.canvas());
    }

    private static Lesson fallBelow() {
        Scene scene = new Scene("The gap under a level that lies on the landing")
                .ground(Scene.LEFT, 18.5, 24, 15)
                .level(2, 24, 15)
                .line(Pen.HIDDEN, 24, 15, 24, 11.5, 27, 11.5, 27, 8)
                .pinch(3, 15, 3, 18.1);
        return Lesson.of(BELOW + " > fall", scene.canvas());
    }

    /** From above: steps and landing, as far as the walls. */
    private static Scene plan(String end, String title) {
        boolean above = end.equals(ABOVE);
        Scene scene = new Scene(title).wood(1, TOP + 3, MEET, BOTTOM - 3).wood(MEET, TOP, FAR, BOTTOM);
        for (double x = 4; x < MEET; x += 3) {
            scene.line(Pen.OUTLINE, x, TOP + 3, x, BOTTOM - 3);
        }
        // The arrow in a plan points up the stair: toward the landing above, away from the landing below.
        return above
                ? scene.line(Pen.THIN, 2.5, 12, 9.5, 12).line(Pen.THIN, 8, 11, 9.5, 12, 8, 13)
                : scene.line(Pen.THIN, 2.5, 12, 9.5, 12).line(Pen.THIN, 4, 11, 2.5, 12, 4, 13);
    }

    private static Lesson width(String end) {
        Scene scene = plan(end, "Across the landing, seen from above").tape(16.5, TOP, 16.5, BOTTOM);
        return Lesson.of(end + " > width", scene.canvas());
    }

    private static Lesson door(String end, String choice) {
        Scene scene = plan(end, "A door at this end of the stair, seen from above: " + choice);
        switch (choice) {
            case "none" -> scene.line(Pen.CUT, FAR, TOP, FAR, BOTTOM);
            case "swings away" -> {
                doorway(scene);
                scene.line(Pen.CUT, FAR, HINGE, FAR + LEAF, HINGE);
                swing(scene, Spot.of(FAR, HINGE), LEAF, 0, 90);
            }
            default -> {
                doorway(scene);
                scene.line(Pen.CUT, FAR, HINGE, FAR - LEAF, HINGE);
                swing(scene, Spot.of(FAR, HINGE), LEAF, 90, 90);
            }
        }
        return Lesson.of(end + " > door", choice, scene.canvas());
    }

    private static void doorway(Scene scene) {
        scene.line(Pen.CUT, FAR, TOP, FAR, HINGE - LEAF).line(Pen.CUT, FAR, HINGE, FAR, BOTTOM);
    }

    private static void swing(Scene scene, Spot hinge, double leaf, double from, double sweep) {
        scene.canvas()
                .group(Picture.Kind.PLAIN, "", () -> scene.canvas().pencil().arc(Pen.HIDDEN, hinge, leaf, from, sweep));
    }

    private static Lesson clearOfDoor(String end) {
        Scene scene = plan(end, "What the door leaves free before the steps, seen from above");
        doorway(scene);
        scene.line(Pen.CUT, FAR, HINGE, FAR - LEAF, HINGE);
        swing(scene, Spot.of(FAR, HINGE), LEAF, 90, 90);
        scene.tape(MEET, HINGE, FAR - LEAF, HINGE);
        return Lesson.of(end + " > clear of door", scene.canvas());
    }
}
