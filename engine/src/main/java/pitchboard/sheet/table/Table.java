package pitchboard.sheet.table;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import pitchboard.sheet.Box;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.type.Lettering;

/** A table, row by row; it can be drawn in several boxes, each going on where the last one ended. */
public final class Table {
    private final Lettering lettering;
    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();

    private Table(Lettering lettering, List<Column> columns) {
        this.lettering = lettering;
        this.columns = List.copyOf(columns);
    }

    public static Table of(Column... columns) {
        return new Table(Lettering.NOTE, List.of(columns));
    }

    /** A table with this lettering, under the same columns and still without rows. */
    public Table lettered(Lettering other) {
        return new Table(other, columns);
    }

    /** Adds a row of the sheet itself. */
    public Table row(String... cells) {
        return row(PartRef.NONE, List.of(cells));
    }

    /** Adds a row about a part. */
    public Table row(PartRef of, List<String> cells) {
        if (cells.size() != columns.size()) {
            throw new IllegalArgumentException(cells.size() + " cells under " + columns.size() + " columns");
        }
        rows.add(new Row.Cells(of, cells));
        return this;
    }

    /** Adds a heading across all columns. It never stands alone at the foot of a page. */
    public Table heading(String words) {
        rows.add(new Row.Heading(words));
        return this;
    }

    public int rowCount() {
        return rows.size();
    }

    List<Row> rows() {
        return rows;
    }

    List<Column> columns() {
        return columns;
    }

    Lettering lettering() {
        return lettering;
    }

    /** Draws rows from the given one on, as many as the box holds; at least one, so that paging always ends. */
    public Drawn draw(Draft draft, Box box, int firstRow) {
        return new TableSetter(this, draft, box).draw(firstRow);
    }

    /** Draws all rows, over as many pages as they need; pages are asked for by number from 1 and filled to their room. */
    public List<Draft> over(IntFunction<Draft> pages) {
        return over(pages, Draft::room);
    }

    /**
     * The same under something else on the first page.
     *
     * @param heading draws it and gives the room that it leaves
     */
    public List<Draft> over(IntFunction<Draft> pages, Function<Draft, Box> heading) {
        List<Draft> drafts = new ArrayList<>();
        int next = 0;
        do {
            Draft draft = pages.apply(drafts.size() + 1);
            Box room = drafts.isEmpty() ? heading.apply(draft) : draft.room();
            drafts.add(draft);
            next = draw(draft, room, next).next();
        } while (next < rows.size());
        return drafts;
    }

    /** How tall all rows are, head included, in a box of this width. */
    public double height(double width) {
        return new TableSetter(this, new Draft("", "", new Box(0, 0, width, 0)), new Box(0, 0, width, 0)).fullHeight();
    }

    /**
     * How far a drawing of the table came.
     *
     * @param next the first row that is still to be drawn; the number of rows when all are
     * @param bottom where the last rule lies, in millimetres from the top of the page
     */
    public record Drawn(int next, double bottom) {}
}
