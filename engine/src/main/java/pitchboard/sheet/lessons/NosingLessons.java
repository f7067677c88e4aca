package pitchboard.sheet.lessons;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Hatch;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.pictures.Canvas;

/** The front edge of a tread, large. */
final class NosingLessons {
    private static final String FIELD = "wanted > nosing";
    private static final double EDGE = 8;
    private static final double TOP = 8;
    private static final double UNDER = 16;
    private static final double TAKEN = 3.6;

    private NosingLessons() {}

    static List<Lesson> all() {
        return List.of(
                Lesson.of(FIELD + " > kind", "square", edge("A square edge", List.of(Spot.of(EDGE, TOP)))),
                Lesson.of(FIELD + " > kind", "rounded", edge("A rounded edge", rounded())),
                Lesson.of(FIELD + " > kind", "bevelled", edge("A bevelled edge", bevelled())),
                radius(),
                bevel());
    }

    private static List<Spot> rounded() {
        List<Spot> corner = new ArrayList<>();
        for (int degrees = 180; degrees >= 90; degrees -= 10) {
            corner.add(centre().toward(degrees, TAKEN));
        }
        return corner;
    }

    private static Spot centre() {
        return Spot.of(EDGE + TAKEN, TOP + TAKEN);
    }

    private static List<Spot> bevelled() {
        return List.of(Spot.of(EDGE, TOP + TAKEN), Spot.of(EDGE + TAKEN, TOP));
    }

    private static Canvas edge(String title, List<Spot> corner) {
        Canvas canvas = Lesson.canvas(title);
        List<Spot> corners = new ArrayList<>(corner);
        corners.addAll(List.of(Spot.of(29, TOP), Spot.of(29, UNDER), Spot.of(EDGE, UNDER)));
        canvas.part("T", () -> {
            canvas.pencil().fill(Fill.WHITE, corners);
            new Hatch(canvas.pencil()).inside(corners, Material.TIMBER_ACROSS);
            canvas.pencil().outline(Pen.CUT, corners);
        });
        canvas.plain(
                () -> canvas.pencil().line(Pen.HIDDEN, Spot.of(14, UNDER + 0.4), Spot.of(14, 23.2), Spot.of(29, 23.2)));
        return canvas;
    }

    private static Lesson radius() {
        Canvas canvas = edge("The radius of the edge", rounded());
        new Taping(canvas).between(centre(), centre().toward(135, TAKEN));
        return Lesson.of(FIELD + " > radius", canvas);
    }

    private static Lesson bevel() {
        Canvas canvas = edge("How much is taken off the edge", bevelled());
        new Taping(canvas).pinch(Spot.of(EDGE, 5), Spot.of(EDGE + TAKEN, 5));
        return Lesson.of(FIELD + " > bevel", canvas);
    }
}
