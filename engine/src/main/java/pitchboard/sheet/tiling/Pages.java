package pitchboard.sheet.tiling;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.drafting.Draft;

/**
 * The windows of a grid that show something.
 *
 * @param cells in reading order
 */
record Pages(Grid grid, List<Grid.Cell> cells) {
    /** The middle first, so that it wins when nothing is gained by moving. */
    private static final List<Double> SHARES = List.of(0.5, 0.0, 1.0);

    Pages {
        cells = List.copyOf(cells);
    }

    /** The fewest pages that can show all marks, trying where the windows have room to move. */
    static Pages fewest(List<Mark> marks, double windowWidth, double windowHeight, double overlap) {
        Box area = Extent.of(marks);
        Grid middle = new Grid(area, windowWidth, windowHeight, overlap, 0.5, 0.5);
        if (middle.columns() * middle.rows() < 3) {
            return new Pages(middle, middle.cells());
        }
        return SHARES.stream()
                .flatMap(left ->
                        SHARES.stream().map(above -> new Grid(area, windowWidth, windowHeight, overlap, left, above)))
                .map(grid -> of(grid, marks))
                .min(Comparator.comparingInt(pages -> pages.cells().size()))
                .orElseThrow();
    }

    private static Pages of(Grid grid, List<Mark> marks) {
        return new Pages(
                grid,
                grid.cells().stream()
                        .filter(cell -> showsAny(grid.core(cell), marks.stream()))
                        .toList());
    }

    private static boolean showsAny(Box core, Stream<Mark> marks) {
        Draft tried = new Draft("", "", core);
        Pane pane = new Pane(core, tried, core.topLeft());
        return marks.anyMatch(mark -> {
            pane.copy(mark);
            return !tried.marks().isEmpty();
        });
    }

    boolean isOne() {
        return cells.size() == 1;
    }

    /** Counted from 1 in reading order; 0 for a window that shows nothing. */
    int number(int column, int row) {
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i).isAt(column, row)) {
                return i + 1;
            }
        }
        return 0;
    }

    /** A letter for each page in reading order. */
    String name(int column, int row) {
        int index = number(column, row) - 1;
        String letter = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? letter : letter + index / 26;
    }

    boolean has(int column, int row) {
        return number(column, row) > 0;
    }
}
