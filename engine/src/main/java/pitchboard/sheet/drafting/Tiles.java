package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.TextBox;

/**
 * Cuts a drawing that is larger than the paper into pages that overlap.
 *
 * @param whole what the drawing covers
 * @param page where each page's piece goes on paper
 * @param overlap shared by neighbours, in millimetres
 */
public record Tiles(Box whole, Box page, double overlap, int columns, int rows) {
    /** One page: its name, such as {@code A1}, and the piece of the drawing it shows. */
    public record Tile(String name, int column, int row, Box piece) {}

    /** A mark that neighbours share. */
    public record Match(String name, Spot at) {}

    /** As few pages as cover the whole. */
    public static Tiles over(Box whole, Box page, double overlap) {
        return new Tiles(
                whole,
                page,
                overlap,
                count(whole.width(), page.width(), overlap),
                count(whole.height(), page.height(), overlap));
    }

    private static int count(double whole, double page, double overlap) {
        return whole <= page ? 1 : (int) Math.ceil((whole - overlap) / (page - overlap));
    }

    /** All pages, row by row from the top. */
    public List<Tile> list() {
        List<Tile> tiles = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                tiles.add(tile(column, row));
            }
        }
        return tiles;
    }

    private Tile tile(int column, int row) {
        double left = start(whole.left(), whole.width(), page.width(), columns, column);
        double top = start(whole.top(), whole.height(), page.height(), rows, row);
        String name = (char) ('A' + row) + String.valueOf(column + 1);
        return new Tile(name, column, row, new Box(left, top, page.width(), page.height()));
    }

    /** Pages share their overlap evenly; a single page has its piece in the middle. */
    private static double start(double first, double whole, double page, int count, int index) {
        return count == 1 ? first + (whole - page) / 2 : first + index * (whole - page) / (count - 1);
    }

    /** The marks of one page, moved to their place on it. Texts are kept where they stand whole. */
    public List<Mark> cut(List<Mark> marks, Tile tile) {
        Window window = new Window(tile.piece());
        List<Mark> kept = new ArrayList<>();
        marks.forEach(mark -> cut(mark, window, kept));
        double right = page.left() - tile.piece().left();
        double down = page.top() - tile.piece().top();
        return kept.stream().map(mark -> Moved.by(mark, right, down)).toList();
    }

    private static void cut(Mark mark, Window window, List<Mark> kept) {
        if (mark instanceof Mark.Line line) {
            window.line(line.spots()).forEach(stretch -> kept.add(new Mark.Line(line.of(), stretch, line.pen())));
        } else if (mark instanceof Mark.Shape shape) {
            shape(shape, window, kept);
        } else if (mark instanceof Mark.Dimension dimension) {
            dimension(dimension, window, kept);
        } else if (mark instanceof Mark.Text text) {
            if (window.box().contains(TextBox.of(text).box())) {
                kept.add(text);
            }
        } else if (mark instanceof Mark.Arc arc) {
            cut(new Mark.Line(arc.of(), Moved.spotsOn(arc), arc.pen()), window, kept);
        } else if (mark instanceof Mark.Disc disc && window.box().contains(disc.centre())) {
            kept.add(disc);
        }
    }

    private static void shape(Mark.Shape shape, Window window, List<Mark> kept) {
        List<Spot> inside = window.area(shape.spots());
        if (shape.fill().isPresent() && !inside.isEmpty()) {
            kept.add(new Mark.Shape(shape.of(), inside, Optional.empty(), shape.fill()));
        }
        shape.pen()
                .ifPresent(pen -> window.edges(shape.spots())
                        .forEach(stretch -> kept.add(new Mark.Line(shape.of(), stretch, pen))));
    }

    /** A dimension stays one where all of it shows; elsewhere its strokes go on as lines. */
    private static void dimension(Mark.Dimension dimension, Window window, List<Mark> kept) {
        boolean whole = window.box().contains(TextBox.of(dimension.label()).box())
                && window.box().contains(dimension.from())
                && window.box().contains(dimension.to());
        if (whole) {
            List<Mark> strokes = new ArrayList<>();
            dimension.strokes().forEach(stroke -> cut(stroke, window, strokes));
            kept.add(new Mark.Dimension(
                    dimension.of(), dimension.from(), dimension.to(), dimension.says(), strokes, dimension.label()));
        } else {
            dimension.strokes().forEach(stroke -> cut(stroke, window, kept));
            cut(dimension.label(), window, kept);
        }
    }

    /** The match marks of one page: two on each side it shares, named after the two pages. */
    public List<Match> matchMarks(Tile tile) {
        List<Match> matches = new ArrayList<>();
        for (Tile other : list()) {
            int steps = Math.abs(other.column() - tile.column()) + Math.abs(other.row() - tile.row());
            if (steps == 1) {
                matches.addAll(shared(tile, other));
            }
        }
        return matches;
    }

    private List<Match> shared(Tile tile, Tile other) {
        Box a = tile.piece();
        Box b = other.piece();
        double left = Math.max(a.left(), b.left());
        double right = Math.min(a.right(), b.right());
        double top = Math.max(a.top(), b.top());
        double bottom = Math.min(a.bottom(), b.bottom());
        boolean sideBySide = tile.row() == other.row();
        String name = tile.name().compareTo(other.name()) < 0 ? tile.name() + other.name() : other.name() + tile.name();
        List<Match> matches = new ArrayList<>();
        for (int i = 1; i <= 2; i++) {
            double share = i / 3.0;
            Spot at = sideBySide
                    ? Spot.of((left + right) / 2, top + share * (bottom - top))
                    : Spot.of(left + share * (right - left), (top + bottom) / 2);
            matches.add(
                    new Match(name + (i == 1 ? "a" : "b"), at.shifted(page.left() - a.left(), page.top() - a.top())));
        }
        return matches;
    }

    /** A small picture of how the pages lie: a box for each name. */
    public Map<String, Box> key(Box room) {
        double width = Math.min(room.width() / columns, room.height() / rows * page.width() / page.height());
        double height = width * page.height() / page.width();
        Map<String, Box> boxes = new LinkedHashMap<>();
        list().forEach(tile -> boxes.put(
                tile.name(),
                new Box(room.left() + tile.column() * width, room.top() + tile.row() * height, width, height)));
        return boxes;
    }
}
