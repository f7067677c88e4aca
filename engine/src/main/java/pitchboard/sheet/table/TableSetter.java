package pitchboard.sheet.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pitchboard.sheet.Box;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Paragraph;
import pitchboard.sheet.type.Typesetter;

/** Sets the rows of one table into one box. */
final class TableSetter {
    private static final double PAD_ACROSS = 1.4;
    private static final double PAD_DOWN = 1.25;
    private static final double CHECK_BOX = 3.2;

    private final Table table;
    private final Draft draft;
    private final Box box;
    private final List<Double> widths;
    /** Rows that are set already, by number: they are asked for when measured and again when drawn. */
    private final Map<Integer, List<Paragraph>> set = new HashMap<>();

    TableSetter(Table table, Draft draft, Box box) {
        this.table = table;
        this.draft = draft;
        this.box = box;
        this.widths = widths();
    }

    private List<Double> widths() {
        double fixed = table.columns().stream().mapToDouble(Column::width).sum();
        long open =
                table.columns().stream().filter(column -> column.width() == 0).count();
        double share = open == 0 ? 0 : Math.max(0, box.width() - fixed) / open;
        return table.columns().stream()
                .map(column -> column.width() == 0 ? share : column.width())
                .toList();
    }

    private double fullWidth() {
        return widths.stream().mapToDouble(width -> width).sum();
    }

    Table.Drawn draw(int firstRow) {
        double y = head(box.top());
        int next = firstRow;
        while (next < table.rows().size()) {
            double needed = rowHeight(next)
                    + (isHeading(next) && next + 1 < table.rows().size() ? rowHeight(next + 1) : 0);
            if (next > firstRow && y + needed > box.bottom()) {
                break;
            }
            y = row(next, y);
            next++;
        }
        draft.pencil().zone("table", new Box(box.left(), box.top(), fullWidth(), y - box.top()));
        return new Table.Drawn(next, y);
    }

    double fullHeight() {
        double height = headHeight();
        for (int i = 0; i < table.rows().size(); i++) {
            height += rowHeight(i);
        }
        return height;
    }

    private boolean isHeading(int row) {
        return table.rows().get(row) instanceof Row.Heading;
    }

    private double headHeight() {
        boolean none = table.columns().stream().allMatch(column -> column.head().isEmpty());
        return none ? 0 : height(headCells());
    }

    private List<Paragraph> headCells() {
        List<Paragraph> cells = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            cells.add(cell(table.columns().get(i).head(), i, table.lettering().bold()));
        }
        return cells;
    }

    /** Draws the head, its words standing on the head rule; returns where the rows begin. */
    private double head(double top) {
        double height = headHeight();
        double bottom = top + height;
        if (height > 0 && !draft.isBlank()) {
            List<Paragraph> cells = headCells();
            for (int i = 0; i < cells.size(); i++) {
                put(cells.get(i), i, bottom - PAD_DOWN - cells.get(i).height(), PartRef.NONE);
            }
        }
        rule(Pen.HEAD_RULE, bottom);
        return bottom;
    }

    private double row(int index, double top) {
        double bottom = top + rowHeight(index);
        if (draft.isBlank()) {
            return bottom;
        }
        Row row = table.rows().get(index);
        if (row instanceof Row.Cells cells) {
            cells(index, cells.of(), top);
        } else if (row instanceof Row.Heading heading) {
            Paragraph words = headingWords(heading);
            words.below(PartRef.NONE, Spot.of(box.left(), bottom - PAD_DOWN - words.height()), Align.LEFT)
                    .forEach(draft::add);
        }
        rule(isHeading(index) ? Pen.PENCIL : Pen.RULE, bottom);
        return bottom;
    }

    private Paragraph headingWords(Row.Heading heading) {
        return Typesetter.paragraph(heading.words(), table.lettering().bold(), fullWidth());
    }

    private void cells(int index, PartRef of, double top) {
        List<Paragraph> cells = paragraphs(index);
        for (int i = 0; i < cells.size(); i++) {
            if (table.columns().get(i).kind() == Column.Kind.CHECK_BOX) {
                double middle = top + PAD_DOWN + table.lettering().capHeight() / 2;
                new Signs(draft.pencil(of)).checkBox(Spot.of(left(i) + PAD_ACROSS, middle - CHECK_BOX / 2), CHECK_BOX);
            }
            put(cells.get(i), i, top + PAD_DOWN, of);
        }
    }

    private double rowHeight(int index) {
        Row row = table.rows().get(index);
        if (row instanceof Row.Heading heading) {
            return headingWords(heading).height() + 2 * PAD_DOWN + 2;
        }
        return height(paragraphs(index));
    }

    private double height(List<Paragraph> cells) {
        double tallest = cells.stream().mapToDouble(Paragraph::height).max().orElse(0);
        return Math.max(tallest, table.lettering().capHeight()) + 2 * PAD_DOWN;
    }

    private List<Paragraph> paragraphs(int index) {
        return set.computeIfAbsent(index, number -> set((Row.Cells) table.rows().get(number)));
    }

    private List<Paragraph> set(Row.Cells row) {
        List<Paragraph> cells = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            cells.add(
                    cell(row.cells().get(i), i, lettering(table.columns().get(i).kind())));
        }
        return cells;
    }

    private Lettering lettering(Column.Kind kind) {
        return switch (kind) {
            case TEXT, CHECK_BOX -> table.lettering();
            case BOLD -> table.lettering().bold();
            case SMALL -> new Lettering(Lettering.SMALL.em(), table.lettering().face());
        };
    }

    private Paragraph cell(String text, int column, Lettering lettering) {
        return Typesetter.paragraph(text, lettering, widths.get(column) - 2 * PAD_ACROSS - indent(column));
    }

    private double indent(int column) {
        return table.columns().get(column).kind() == Column.Kind.CHECK_BOX ? CHECK_BOX + PAD_ACROSS : 0;
    }

    private double left(int column) {
        return box.left()
                + widths.subList(0, column).stream().mapToDouble(width -> width).sum();
    }

    private void put(Paragraph cell, int column, double top, PartRef of) {
        Align align = table.columns().get(column).align();
        double inner = widths.get(column) - 2 * PAD_ACROSS - indent(column);
        double x = left(column) + PAD_ACROSS + indent(column) + inner * align.share();
        cell.below(of, Spot.of(x, top), align).forEach(draft::add);
    }

    private void rule(Pen pen, double y) {
        draft.pencil().line(pen, Spot.of(box.left(), y), Spot.of(box.left() + fullWidth(), y));
    }
}
