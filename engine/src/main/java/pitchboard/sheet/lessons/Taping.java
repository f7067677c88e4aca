package pitchboard.sheet.lessons;

import java.util.List;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Picture;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.pictures.Canvas;

/** Shows which way the tape is held. */
record Taping(Canvas canvas) {
    private static final double HEAD = 1.7;
    private static final double HALF_ANGLE = 20;
    private static final double STOP = 1;
    private static final double TAIL = 2.6;

    /** From one spot to another, with a stop at each end. */
    void between(Spot from, Spot to) {
        canvas.group(Picture.Kind.SIZE, "", () -> {
            double way = from.directionTo(to);
            Pencil pencil = canvas.pencil();
            pencil.line(Pen.TICK, from.toward(way, HEAD / 2), to.toward(way, -HEAD / 2));
            arrow(from, way + 180);
            arrow(to, way);
        });
    }

    /** Two spots too near for a line between them: an arrow to each from outside. */
    void pinch(Spot from, Spot to) {
        canvas.group(Picture.Kind.SIZE, "", () -> {
            double way = from.directionTo(to);
            Pencil pencil = canvas.pencil();
            pencil.line(Pen.TICK, from.toward(way, -TAIL - HEAD), from.toward(way, -HEAD / 2));
            pencil.line(Pen.TICK, to.toward(way, TAIL + HEAD), to.toward(way, HEAD / 2));
            arrow(from, way);
            arrow(to, way + 180);
        });
    }

    private void arrow(Spot tip, double way) {
        canvas.pencil().line(Pen.TICK, tip.toward(way + 90, STOP), tip.toward(way - 90, STOP));
        canvas.pencil()
                .fill(
                        Fill.BLACK,
                        List.of(
                                tip,
                                tip.toward(way + 180 - HALF_ANGLE, HEAD),
                                tip.toward(way + 180 + HALF_ANGLE, HEAD)));
    }
}
