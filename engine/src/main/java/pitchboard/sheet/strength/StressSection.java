package pitchboard.sheet.strength;

import pitchboard.strength.elements.StressGrid;
import pitchboard.strength.elements.mesh.Xy;

/**
 * A straight way across the grain, from the lower edge up to where the wood ends.
 *
 * @param column of the grid
 */
record StressSection(int column, int firstRow, int lastRow) {
    static StressSection through(Xy place, StressGrid grid) {
        int column = grid.columnAt(place);
        int first = 0;
        while (first + 1 < grid.rows() && Double.isNaN(grid.along(first, column))) {
            first++;
        }
        int last = first;
        while (last + 1 < grid.rows() && !Double.isNaN(grid.along(last + 1, column))) {
            last++;
        }
        return new StressSection(column, first, last);
    }
}
