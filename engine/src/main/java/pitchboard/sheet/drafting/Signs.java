package pitchboard.sheet.drafting;

import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TypeLine;
import pitchboard.sheet.type.Typesetter;

/** The small signs of a drawing. */
public final class Signs {
    private final Pencil pencil;

    public Signs(Pencil pencil) {
        this.pencil = pencil;
    }

    /** An arrow with a word at its tail: the way up in a plan, the way to the ground on a board. */
    public void arrow(Spot tail, Spot tip, String word) {
        double way = tail.directionTo(tip);
        pencil.line(Pen.OUTLINE, tail, tip.toward(way, -2));
        pencil.fill(Fill.BLACK, List.of(tip, tip.toward(way + 160, 4.5), tip.toward(way - 160, 4.5)));
        pencil.circle(Pen.OUTLINE, tail.toward(way, -0.8), 0.8);
        if (!word.isEmpty()) {
            double turn = way > 90.001 || way <= -90 ? way + 180 : way;
            boolean flipped = turn != way;
            Spot beside = tail.toward(way, -3).toward(turn - 90, Lettering.HEAD.capHeight() / 2);
            pencil.text(beside, turn, word, Lettering.HEAD, flipped ? Align.LEFT : Align.RIGHT);
        }
    }

    /** The line at which a drawing is broken off, with a zigzag in the middle. */
    public void breakLine(Spot from, Spot to) {
        double way = from.directionTo(to);
        Spot middle = from.midTo(to);
        pencil.line(
                Pen.BREAK,
                from.toward(way, -2),
                middle.toward(way, -2),
                middle.toward(way, -0.9).toward(way + 90, 3),
                middle.toward(way, 0.9).toward(way - 90, 3),
                middle.toward(way, 2),
                to.toward(way, 2));
    }

    /** Which way the grain runs: a line with one barb at each end, on opposite sides. */
    public void grain(Spot middle, double direction, double length) {
        Spot from = middle.toward(direction, -length / 2);
        Spot to = middle.toward(direction, length / 2);
        pencil.line(Pen.THIN, from.toward(direction + 25, 3), from, to, to.toward(direction + 205, 3));
    }

    /** Two strokes crossing on a spot: a hole's centre, a post's. */
    public void centre(Spot spot, double reach) {
        pencil.line(Pen.CENTRE, spot.shifted(-reach, 0), spot.shifted(reach, 0));
        pencil.line(Pen.CENTRE, spot.shifted(0, -reach), spot.shifted(0, reach));
    }

    /** A mark that two pages share: laid over each other, they show the same place. */
    public void match(Spot spot, String name) {
        pencil.circle(Pen.PENCIL, spot, 2.5);
        pencil.line(Pen.THIN, spot.shifted(-4.5, 0), spot.shifted(4.5, 0));
        pencil.line(Pen.THIN, spot.shifted(0, -4.5), spot.shifted(0, 4.5));
        TypeLine words = Typesetter.line(name, Lettering.SMALL.bold());
        pencil.draft()
                .add(pencil.draft()
                        .firstFree(List.of(
                                words.at(pencil.of(), spot.shifted(3.2, -3.2), 0, Align.LEFT),
                                words.at(pencil.of(), spot.shifted(-3.2, -3.2), 0, Align.RIGHT),
                                words.at(pencil.of(), spot.shifted(3.2, 4.6), 0, Align.LEFT),
                                words.at(pencil.of(), spot.shifted(-3.2, 4.6), 0, Align.RIGHT))));
    }

    /** A height: a triangle that stands on a level line, the words above the line. */
    public void level(Spot on, double lineLength, String words) {
        pencil.outline(Pen.THIN, Fill.WHITE, List.of(on, on.shifted(-1.6, -2.6), on.shifted(1.6, -2.6)));
        pencil.line(Pen.THIN, on.shifted(-1.6, -2.6), on.shifted(lineLength, -2.6));
        pencil.text(on.shifted(2.6, -3.6), words, Lettering.NOTE, Align.LEFT);
    }

    /** An empty box to be ticked with a pencil. */
    public void checkBox(Spot topLeft, double side) {
        pencil.box(Pen.PENCIL, new Box(topLeft.x(), topLeft.y(), side, side));
    }

    /** A part's mark in a circle, as it is pencilled on the wood. */
    public void balloon(Spot centre, String mark) {
        pencil.circle(Pen.PENCIL, centre, 3.4);
        pencil.text(centre.shifted(0, Lettering.HEAD.capHeight() / 2), mark, Lettering.HEAD, Align.CENTRE);
    }
}
