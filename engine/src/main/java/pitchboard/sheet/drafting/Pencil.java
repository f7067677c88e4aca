package pitchboard.sheet.drafting;

import java.util.List;
import java.util.Optional;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Paragraph;
import pitchboard.sheet.type.Typesetter;

/** Draws on a draft in the name of one part. Every method puts its mark down and hands nothing back unless said. */
public final class Pencil {
    private final Draft draft;
    private final PartRef of;

    Pencil(Draft draft, PartRef of) {
        this.draft = draft;
        this.of = of;
    }

    public Draft draft() {
        return draft;
    }

    public PartRef of() {
        return of;
    }

    public void line(Pen pen, Spot... spots) {
        line(pen, List.of(spots));
    }

    public void line(Pen pen, List<Spot> spots) {
        draft.add(new Mark.Line(of, spots, pen));
    }

    /** A closed outline, not filled. */
    public void outline(Pen pen, List<Spot> corners) {
        draft.add(new Mark.Shape(of, corners, Optional.of(pen), Optional.empty()));
    }

    /** A closed outline over a tint. */
    public void outline(Pen pen, Fill fill, List<Spot> corners) {
        draft.add(new Mark.Shape(of, corners, Optional.of(pen), Optional.of(fill)));
    }

    /** A tint without an edge. */
    public void fill(Fill fill, List<Spot> corners) {
        draft.add(new Mark.Shape(of, corners, Optional.empty(), Optional.of(fill)));
    }

    public void box(Pen pen, Box box) {
        outline(pen, box.corners());
    }

    public void circle(Pen pen, Spot centre, double radius) {
        draft.add(new Mark.Disc(of, centre, radius, Optional.of(pen), Optional.empty()));
    }

    /** A filled dot. */
    public void dot(Fill fill, Spot centre, double radius) {
        draft.add(new Mark.Disc(of, centre, radius, Optional.empty(), Optional.of(fill)));
    }

    /** Part of a circle from one direction anticlockwise over a sweep, in degrees. */
    public void arc(Pen pen, Spot centre, double radius, double from, double sweep) {
        draft.add(new Mark.Arc(of, centre, radius, from, sweep, pen));
    }

    /** One level line of text with its baseline on the spot. */
    public void text(Spot at, String text, Lettering lettering, Align align) {
        text(at, 0, text, lettering, align);
    }

    /** One line of text that turns about the spot, degrees anticlockwise. */
    public void text(Spot at, double turn, String text, Lettering lettering, Align align) {
        if (!text.isEmpty()) {
            draft.add(Typesetter.line(text, lettering).at(of, at, turn, align));
        }
    }

    /** Running text in a column; returns how far down it reaches. */
    public double paragraph(Spot topLeft, double width, String text, Lettering lettering) {
        Paragraph paragraph = Typesetter.paragraph(text, lettering, width);
        paragraph.below(of, topLeft, Align.LEFT).forEach(draft::add);
        return topLeft.y() + paragraph.height();
    }

    /** Names an area without drawing it. */
    public void zone(String name, Box box) {
        draft.add(new Mark.Zone(of, name, box));
    }
}
