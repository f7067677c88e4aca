package pitchboard.sheet.tiling;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;

/**
 * How windows of one size lie over an area: in columns and rows, each overlapping its neighbours.
 *
 * @param shareLeft the part, 0 to 1, of what the windows have to spare across that lies left of the area
 * @param shareAbove the part of what they have to spare down that lies above it
 */
record Grid(Box area, double windowWidth, double windowHeight, double overlap, double shareLeft, double shareAbove) {
    private static final double ROUNDING = 1e-6;

    /** One window by its place. */
    record Cell(int column, int row) {
        boolean isAt(int otherColumn, int otherRow) {
            return column == otherColumn && row == otherRow;
        }
    }

    int columns() {
        return count(area.width(), windowWidth);
    }

    int rows() {
        return count(area.height(), windowHeight);
    }

    private int count(double length, double window) {
        return Math.max(1, (int) Math.ceil((length - overlap) / (window - overlap) - ROUNDING));
    }

    List<Cell> cells() {
        List<Cell> cells = new ArrayList<>();
        for (int row = 0; row < rows(); row++) {
            for (int column = 0; column < columns(); column++) {
                cells.add(new Cell(column, row));
            }
        }
        return cells;
    }

    /** The part of the large drawing that one page shows. */
    Box window(Cell cell) {
        double spareAcross = columns() * (windowWidth - overlap) + overlap - area.width();
        double spareDown = rows() * (windowHeight - overlap) + overlap - area.height();
        double left = area.left() - spareAcross * shareLeft + cell.column() * (windowWidth - overlap);
        double top = area.top() - spareDown * shareAbove + cell.row() * (windowHeight - overlap);
        return new Box(left, top, windowWidth, windowHeight);
    }

    /** The part that no other page shows better: up to the middle of each shared strip. */
    Box core(Cell cell) {
        double half = overlap / 2;
        return window(cell)
                .withoutLeft(cell.column() > 0 ? half : 0)
                .withoutRight(cell.column() + 1 < columns() ? half : 0)
                .withoutTop(cell.row() > 0 ? half : 0)
                .withoutBottom(cell.row() + 1 < rows() ? half : 0);
    }
}
