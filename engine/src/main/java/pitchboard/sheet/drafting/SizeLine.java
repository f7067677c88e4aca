package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Quad;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.TextBox;
import pitchboard.sheet.type.TypeLine;
import pitchboard.sheet.type.Typesetter;

/**
 * One dimension whose label stands level wherever there is room for it, near the line or off it with a leader; for
 * drawings too small for strings of dimensions.
 */
public final class SizeLine {
    private static final double BESIDE = 1.1;
    private static final double AROUND = 0.5;
    private static final double TO_LABEL = 0.6;
    private static final double OVERRUN = 1;
    private static final List<Double> OFF = List.of(0.0, 4.0, 8.0, 13.0, 19.0);
    private static final List<Double> ALONG = List.of(0.0, 0.3, -0.3);

    private final Pencil pencil;
    private final Lettering lettering;
    private final Box room;

    /**
     * Sizes whose labels may stand in one part of the page.
     *
     * @param room no larger than that of the draft
     */
    public SizeLine(Pencil pencil, Lettering lettering, Box room) {
        this.pencil = pencil;
        this.lettering = lettering;
        this.room = room;
    }

    /** Which side of the line the label is to stand on, as seen on paper. */
    public enum Toward {
        LEFT(-1, 0),
        RIGHT(1, 0),
        ABOVE(0, -1),
        BELOW(0, 1),
        LEFT_ABOVE(-1, -1),
        RIGHT_ABOVE(1, -1),
        LEFT_BELOW(-1, 1),
        RIGHT_BELOW(1, 1);

        private final int right;
        private final int down;

        Toward(int right, int down) {
            this.right = right;
            this.down = down;
        }

        /** The middle of a box of this size beside another, so far off it and a share of its length along it. */
        private Spot beside(Box line, double width, double height, double off, double along) {
            Spot middle = line.centre();
            return middle.shifted(
                    right == 0 ? along * line.width() : right * ((line.width() + width) / 2 + off),
                    down == 0 ? along * line.height() : down * ((line.height() + height) / 2 + off));
        }
    }

    /**
     * Draws a dimension on the line from one spot to the other, or nothing when its label has no room.
     *
     * @param from the first measured station, {@code on} the spot of the line across from it
     * @param sides where to try the label, the best side first
     * @return whether it was drawn
     */
    public boolean draw(Station from, Spot onFrom, Station to, Spot onTo, String words, List<Toward> sides) {
        TypeLine line = Typesetter.line(words, lettering);
        Optional<Placed> placed = place(line, Box.around(List.of(onFrom, onTo)), sides);
        placed.ifPresent(label -> put(from, onFrom, to, onTo, label));
        return placed.isPresent();
    }

    /** The same with the line straight between the stations. */
    public boolean draw(Station from, Station to, String words, List<Toward> sides) {
        return draw(from, from.at(), to, to.at(), words, sides);
    }

    /** Draws a plumb dimension with its label turned along it, on its left; the caller knows that there is room. */
    public void plumb(double x, Station from, Station to, String words) {
        Spot onFrom = Spot.of(x, from.at().y());
        Spot onTo = Spot.of(x, to.at().y());
        TypeLine line = Typesetter.line(words, lettering);
        Mark.Text label = line.at(pencil.of(), onFrom.midTo(onTo).shifted(-BESIDE, 0), 90, Align.CENTRE);
        put(from, onFrom, to, onTo, new Placed(label, List.of()));
    }

    private record Placed(Mark.Text label, List<Mark> leader) {}

    private Optional<Placed> place(TypeLine words, Box line, List<Toward> sides) {
        return OFF.stream()
                .flatMap(off -> sides.stream()
                        .flatMap(side -> ALONG.stream()
                                .map(along -> side.beside(
                                        line, words.width(), lettering.capHeight(), BESIDE + off, off == 0 ? along : 0))
                                .map(centre -> placed(words, centre, line, off))))
                .filter(this::hasRoom)
                .findFirst();
    }

    private Placed placed(TypeLine words, Spot centre, Box line, double off) {
        Mark.Text label = words.at(pencil.of(), centre.shifted(0, lettering.capHeight() / 2), 0, Align.CENTRE);
        return new Placed(label, off == 0 ? List.of() : leader(line.centre(), label));
    }

    private boolean hasRoom(Placed placed) {
        return hasRoom(placed.label()) && placed.leader().stream().noneMatch(this::strikesText);
    }

    private boolean hasRoom(Mark.Text label) {
        Box around = TextBox.of(label).box().inset(-AROUND);
        return room.contains(around)
                && pencil.draft().isFree(Quad.of(around))
                && pencil.draft().isClear(Quad.of(around));
    }

    private boolean strikesText(Mark leader) {
        List<Spot> ends = ((Mark.Line) leader).spots();
        return pencil.draft().strikesText(ends.get(0), ends.get(1));
    }

    /** From the middle of the line to the nearest place on the label's edge. */
    private List<Mark> leader(Spot middle, Mark.Text label) {
        Box box = TextBox.of(label).box().inset(-TO_LABEL);
        Spot end = Spot.of(
                Math.max(box.left(), Math.min(box.right(), middle.x())),
                Math.max(box.top(), Math.min(box.bottom(), middle.y())));
        return List.of(new Mark.Line(pencil.of(), List.of(middle, end), Pen.DIMENSION));
    }

    private void put(Station from, Spot onFrom, Station to, Spot onTo, Placed placed) {
        DimensionLine line = new DimensionLine(onFrom, onFrom.directionTo(onTo));
        List<Mark> strokes = new ArrayList<>(line.end(pencil.of(), from.at()));
        strokes.addAll(line.end(pencil.of(), to.at()));
        strokes.add(line.between(pencil.of(), onFrom, onTo, OVERRUN, OVERRUN));
        strokes.addAll(placed.leader());
        Length says = to.along().minus(from.along()).abs();
        pencil.draft().add(new Mark.Dimension(pencil.of(), from.at(), to.at(), says, strokes, placed.label()));
    }
}
