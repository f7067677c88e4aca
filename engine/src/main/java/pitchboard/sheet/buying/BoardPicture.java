package pitchboard.sheet.buying;

import java.util.List;
import pitchboard.buying.order.Alike;
import pitchboard.buying.order.Board;
import pitchboard.buying.order.Cut;
import pitchboard.measure.Length;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;

/**
 * One board, drawn along the page: trimmings shaded, kerfs as black strokes, each piece with its mark and length, the
 * running mark of its end above it.
 *
 * @param longest of all boards on these sheets; it fills the page
 */
record BoardPicture(Errand errand, Length longest) {
    static final double HEIGHT = 27;

    private static final double SIDE = 40;
    private static final double MARKS = 14;
    private static final double BOARD = 9;
    private static final double CHECK_BOX = 3.2;
    private static final Lettering MARK = Lettering.ofCapitals(2);

    void draw(Draft page, Box row, Alike alike) {
        words(page, row, alike);
        Box room = row.withoutLeft(SIDE);
        double scale = (room.width() - 2) / longest.approxMm();
        double top = row.top() + MARKS;
        Board board = alike.board();
        Pencil pencil = page.pencil();
        box(pencil, Fill.SHADE, at(room, scale, Length.ZERO), at(room, scale, board.trim()), top);
        for (Cut cut : board.cuts()) {
            piece(page, cut, at(room, scale, cut.from()), at(room, scale, cut.to()), top);
        }
        left(pencil, board, room, scale, top);
        bad(pencil, board, room, scale, top);
        pencil.box(Pen.OUTLINE, new Box(room.left(), top, board.length().approxMm() * scale, BOARD));
        hook(pencil, room.left(), top);
        runningMarks(pencil, board, room, scale, top);
    }

    private static double at(Box room, double scale, Length along) {
        return room.left() + along.approxMm() * scale;
    }

    private static void box(Pencil pencil, Fill fill, double from, double to, double top) {
        if (to > from) {
            pencil.fill(fill, new Box(from, top, to - from, BOARD).corners());
        }
    }

    /** Beside the board: boxes to tick, how many, how long, where from. */
    private void words(Draft page, Box row, Alike alike) {
        Pencil pencil = page.pencil();
        double y = row.top() + MARKS;
        int boxes = Math.min(alike.count(), 8);
        for (int i = 0; i < boxes; i++) {
            new Signs(pencil).checkBox(Spot.of(row.left() + i * (CHECK_BOX + 1), y - 5.4), CHECK_BOX);
        }
        String count = alike.count() == 1 ? "" : alike.count() + " × ";
        pencil.text(
                Spot.of(row.left(), y + 2.6),
                count + name(alike.board()),
                Lettering.ofCapitals(2.6).bold(),
                Align.LEFT);
        String numbers = alike.count() == 1
                ? "board " + alike.first()
                : "boards " + alike.first() + " to " + (alike.first() + alike.count() - 1);
        pencil.text(
                Spot.of(row.left(), y + 7.2),
                numbers + (alike.board().isBought() ? "" : ", own rack"),
                Lettering.NOTE,
                Align.LEFT);
    }

    private String name(Board board) {
        return board.origin() instanceof Board.Origin.FromYard yard
                ? errand.size(yard.sold().nominal())
                : errand.size(board.length());
    }

    private void piece(Draft page, Cut cut, double from, double to, double top) {
        Pencil pencil = page.pencil(PartRef.of(cut.need().mark()));
        pencil.box(Pen.OUTLINE, new Box(from, top, to - from, BOARD));
        String mark = "**" + cut.need().mark() + "**";
        if (cut.pieces() == 1) {
            write(pencil, List.of(mark, errand.size(cut.need().length())), from, to, top);
            return;
        }
        double each = (to - from)
                * cut.need().length().approxMm()
                / cut.to().minus(cut.from()).approxMm();
        pencil.line(Pen.HIDDEN, Spot.of(from + each, top), Spot.of(to - each, top + BOARD));
        String meeting = cut.need().nested().orElseThrow().meeting().words();
        write(pencil, List.of(mark, "first"), from, to - each, top);
        write(pencil, List.of(mark, "turned, " + meeting + " side by side"), from + each, to, top);
    }

    /** Lines under each other if they fit between the ends; turned, or the first alone, where it is narrow. */
    private void write(Pencil pencil, List<String> lines, double from, double to, double top) {
        double middle = (from + to) / 2;
        double widest = lines.stream()
                .mapToDouble(line -> Typesetter.width(line, Lettering.NOTE))
                .max()
                .orElse(0);
        if (widest + 1.5 <= to - from) {
            pencil.text(Spot.of(middle, top + 3.7), lines.get(0), Lettering.NOTE, Align.CENTRE);
            pencil.text(Spot.of(middle, top + 7.6), lines.get(1), Lettering.NOTE, Align.CENTRE);
        } else if (Typesetter.width(lines.get(0), Lettering.NOTE) + 0.8 <= to - from) {
            pencil.text(Spot.of(middle, top + BOARD / 2 + 1.1), lines.get(0), Lettering.NOTE, Align.CENTRE);
        } else {
            pencil.text(Spot.of(middle, top + BOARD + 3.2), lines.get(0), Lettering.NOTE, Align.CENTRE);
        }
    }

    private void left(Pencil pencil, Board board, Box room, double scale, double top) {
        if (!board.left().isPositive()) {
            return;
        }
        double from = at(room, scale, board.length().minus(board.left()));
        double to = at(room, scale, board.length());
        box(pencil, board.isKept() ? Fill.LIGHT : Fill.SHADE, from, to, top);
        double sound = at(room, scale, board.length().minus(board.bad()));
        String length = errand.size(board.left().roundedDown(errand.tape().graduation()));
        if (board.isKept()) {
            write(pencil, List.of("kept", length), from, sound, top);
        } else if (Typesetter.width("scrap", Lettering.SMALL) + 1 <= sound - from) {
            pencil.text(Spot.of((from + sound) / 2, top + BOARD / 2 + 0.9), "scrap", Lettering.SMALL, Align.CENTRE);
        }
    }

    /** The bad end lies away from the hook, crossed out. */
    private void bad(Pencil pencil, Board board, Box room, double scale, double top) {
        if (board.bad().isPositive()) {
            double from = at(room, scale, board.length().minus(board.bad()));
            double to = at(room, scale, board.length());
            box(pencil, Fill.SHADE, from, to, top);
            pencil.line(Pen.PENCIL, Spot.of(from, top), Spot.of(to, top + BOARD));
            pencil.line(Pen.PENCIL, Spot.of(from, top + BOARD), Spot.of(to, top));
            pencil.text(Spot.of(to, top + BOARD + 3.2), "bad end", Lettering.SMALL, Align.RIGHT);
        }
    }

    /** Where the tape hooks on. */
    private static void hook(Pencil pencil, double x, double top) {
        pencil.fill(
                Fill.BLACK,
                List.of(
                        Spot.of(x, top + BOARD / 2),
                        Spot.of(x - 2.6, top + BOARD / 2 - 1.5),
                        Spot.of(x - 2.6, top + BOARD / 2 + 1.5)));
    }

    /** The trim line and the end of every piece; the kerf lies beyond it. */
    private void runningMarks(Pencil pencil, Board board, Box room, double scale, double top) {
        double last = Double.NEGATIVE_INFINITY;
        if (board.trim().isPositive()) {
            last = mark(pencil, board.trim(), at(room, scale, board.trim()), top, last);
        }
        double kerf = Math.max(0.45, errand.list().yard().saw().kerf().approxMm() * scale);
        for (Cut cut : board.cuts()) {
            if (cut.pieces() == 2) {
                Length second = cut.to().minus(cut.need().length());
                last = mark(pencil, second, at(room, scale, second), top, last);
            }
            double x = at(room, scale, cut.to());
            if (cut.to().isLessThan(board.length())) {
                pencil.fill(Fill.BLACK, new Box(x, top, kerf, BOARD).corners());
                last = mark(pencil, cut.to(), x, top, last);
            }
        }
    }

    private double mark(Pencil pencil, Length along, double x, double top, double last) {
        double at = Math.max(x, last + MARK.lineHeight());
        pencil.line(Pen.PENCIL, Spot.of(x, top), Spot.of(x, top - 1.2), Spot.of(at, top - 2.6));
        pencil.text(Spot.of(at + MARK.capHeight() / 2, top - 3.2), 90, errand.running(along), MARK, Align.LEFT);
        return at;
    }
}
