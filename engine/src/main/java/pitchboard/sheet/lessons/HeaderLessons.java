package pitchboard.sheet.lessons;

import java.util.List;
import java.util.function.UnaryOperator;
import pitchboard.sheet.Pen;

/** How the header and what lies on it are measured. */
final class HeaderLessons {
    private static final double FACE = 13;
    private static final double EDGE = 9;
    private static final double TOP = 5;
    private static final double UNDER = 8;
    private static final double LOW = 21;

    private HeaderLessons() {}

    static List<Lesson> all() {
        UnaryOperator<Scene> depth = scene -> scene.tape(21.5, UNDER, 21.5, LOW).line(Pen.THIN, 17.5, LOW, 23, LOW);
        return List.of(
                lesson("measured > header", "The header that holds the head", depth),
                lesson("measured > header > what", "The header that holds the head", scene -> scene),
                lesson("measured > header > depth", "The header's own height", depth),
                lesson(
                        "measured > header > decking",
                        "The thickness of all that lies on the header",
                        scene -> scene.pinch(5.5, TOP, 5.5, UNDER)
                                .line(Pen.THIN, 4, TOP, EDGE, TOP)
                                .line(Pen.THIN, 4, UNDER, EDGE, UNDER)),
                lesson(
                        "measured > header > decking overhang",
                        "From the face of the header to the edge of the decking",
                        scene -> scene.pinch(EDGE, 12, FACE, 12).line(Pen.THIN, EDGE, UNDER, EDGE, 14)));
    }

    private static Lesson lesson(String field, String title, UnaryOperator<Scene> measure) {
        Scene scene = new Scene(title).header(FACE, UNDER, LOW, 4).decking(EDGE, TOP, UNDER - TOP);
        return Lesson.of(field, measure.apply(scene).canvas());
    }
}
