package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Paragraph;
import pitchboard.sheet.type.Typesetter;

/** Notes with leaders: a few lines of text, a shoulder level with the first line, and a line to what is meant. */
public final class Notes {
    private static final double SHOULDER = 3;
    private static final double TO_TEXT = 1.2;
    private static final double ARROW = 2.8;
    private static final double ARROW_HALF_ANGLE = 10;
    private static final double DOT = 0.55;

    private final Pencil pencil;
    private final Lettering lettering;
    private final double width;

    /**
     * Notes in the lettering of notes.
     *
     * @param width the longest line a note may have, in millimetres
     */
    public Notes(Pencil pencil, double width) {
        this(pencil, Lettering.NOTE, width);
    }

    public Notes(Pencil pencil, Lettering lettering, double width) {
        this.pencil = pencil;
        this.lettering = lettering;
        this.width = width;
    }

    /** A note on an edge: the leader ends in an arrow head that touches it. */
    public void onEdge(Spot edge, Spot shoulder, String text) {
        Spot knee = put(edge, shoulder, text);
        arrow(edge, knee);
    }

    /** A note on an area: the leader ends in a dot inside it. */
    public void onArea(Spot inside, Spot shoulder, String text) {
        put(inside, shoulder, text);
        pencil.dot(Fill.BLACK, inside, DOT);
    }

    /** Like {@link #onEdge}, at the first of the shoulders where the text stands free. */
    public void onEdge(Spot edge, List<Spot> shoulders, String text) {
        onEdge(edge, firstFree(edge, shoulders, text), text);
    }

    /** Like {@link #onArea}, at the first of the shoulders where the text stands free. */
    public void onArea(Spot inside, List<Spot> shoulders, String text) {
        onArea(inside, firstFree(inside, shoulders, text), text);
    }

    private Spot firstFree(Spot target, List<Spot> shoulders, String text) {
        Paragraph paragraph = Typesetter.paragraph(text, lettering, width);
        List<Spot> free = shoulders.stream()
                .filter(shoulder -> pencil.draft().isFree(Quad.of(box(target, shoulder, paragraph))))
                .toList();
        return free.stream()
                .filter(shoulder -> pencil.draft().isClear(Quad.of(box(target, shoulder, paragraph))))
                .findFirst()
                .orElseGet(() -> free.isEmpty() ? shoulders.get(0) : free.get(0));
    }

    private static boolean isRightOf(Spot target, Spot shoulder) {
        return shoulder.x() >= target.x();
    }

    private Box box(Spot target, Spot shoulder, Paragraph paragraph) {
        double left = isRightOf(target, shoulder)
                ? shoulder.x() + SHOULDER + TO_TEXT
                : shoulder.x() - SHOULDER - TO_TEXT - paragraph.width();
        double top = shoulder.y() - lettering.capHeight() / 2;
        return new Box(left, top, paragraph.width(), paragraph.height() + lettering.em() * 0.2);
    }

    /** Puts text and leader; the text lies on the far side of the shoulder. Returns the leader's knee. */
    private Spot put(Spot target, Spot shoulder, String text) {
        Paragraph paragraph = Typesetter.paragraph(text, lettering, width);
        Box box = box(target, shoulder, paragraph);
        double shoulderEnd = shoulder.x() + (isRightOf(target, shoulder) ? SHOULDER : -SHOULDER);
        pencil.line(Pen.THIN, target, shoulder, Spot.of(shoulderEnd, shoulder.y()));
        List<Mark.Text> lines = new ArrayList<>(paragraph.below(pencil.of(), box.topLeft(), Align.LEFT));
        lines.forEach(pencil.draft()::add);
        return shoulder;
    }

    private void arrow(Spot tip, Spot from) {
        double back = tip.directionTo(from);
        pencil.fill(
                Fill.BLACK,
                List.of(tip, tip.toward(back - ARROW_HALF_ANGLE, ARROW), tip.toward(back + ARROW_HALF_ANGLE, ARROW)));
    }
}
