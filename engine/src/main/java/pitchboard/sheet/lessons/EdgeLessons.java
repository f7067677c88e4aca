package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.sheet.Pen;

/** How the open edge of the upper floor is measured, seen from above; the flight comes up from the left. */
final class EdgeLessons {
    private static final double EDGE = 12;
    private static final double LEFT_END = 9;
    private static final double RIGHT_END = 15;

    private EdgeLessons() {}

    static List<Lesson> all() {
        return List.of(
                lesson("measured > edge above", LEFT_END, 2.5),
                lesson("measured > edge above > left", LEFT_END, 2.5),
                lesson("measured > edge above > right", RIGHT_END, 21.5));
    }

    private static Lesson lesson(String field, double from, double to) {
        Scene scene = new Scene("Along the floor's edge, from the end of the treads, seen from above")
                .wood(1, LEFT_END, EDGE, RIGHT_END)
                .wood(EDGE, 2, 26, 22);
        for (double x = 4; x < EDGE; x += 3) {
            scene.line(Pen.OUTLINE, x, LEFT_END, x, RIGHT_END);
        }
        scene.line(Pen.THIN, 2.5, 12, 10, 12)
                .line(Pen.THIN, 8.5, 11, 10, 12, 8.5, 13)
                .tape(EDGE, from, EDGE, to);
        return Lesson.of(field, scene.canvas());
    }
}
