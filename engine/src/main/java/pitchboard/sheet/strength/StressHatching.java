package pitchboard.sheet.strength;

import java.util.List;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.strength.elements.StressGrid;
import pitchboard.strength.elements.mesh.Xy;

/**
 * Stress along the grain as strokes that print in black and white: along the grain where the wood is stretched, across it
 * where it is pressed, and the closer the more.
 *
 * @param stepMpa from one closeness to the next; below it there are no strokes
 */
record StressHatching(Pencil pencil, View view, double stepMpa) {
    /** From one place of the grid to the next, in mm on paper. */
    static final double APART = 0.12;

    /** Every so manieth row of the grid has a stroke: by how many steps the stress reaches. */
    private static final int[] EVERY = {0, 16, 8, 4, 2};

    static final int CLOSEST = EVERY.length - 1;

    void draw(StressGrid grid) {
        for (int row = 0; row < grid.rows(); row++) {
            int level = row;
            strokes(grid.columns(), level, column -> grid.along(level, column), column -> grid.at(level, column));
        }
        for (int column = 0; column < grid.columns(); column++) {
            int upright = column;
            strokes(grid.rows(), upright, row -> -grid.along(row, upright), row -> grid.at(row, upright));
        }
    }

    /** What stands at a place of one row. */
    private interface Stress {
        double at(int place);
    }

    /** Where a place of one row lies. */
    private interface Places {
        Xy at(double place);
    }

    private void strokes(int length, int line, Stress stress, Places places) {
        int start = -1;
        for (int i = 0; i <= length; i++) {
            boolean drawn = i < length && isDrawn(stress.at(i), line);
            if (drawn && start < 0) {
                start = i;
            } else if (!drawn && start >= 0) {
                pencil.line(Pen.THIN, spot(places.at(start - 0.5)), spot(places.at(i - 0.5)));
                start = -1;
            }
        }
    }

    private boolean isDrawn(double stress, int line) {
        if (!(stress >= stepMpa)) {
            return false;
        }
        int every = EVERY[Math.min(CLOSEST, (int) (stress / stepMpa))];
        return line % every == 0;
    }

    private Spot spot(Xy place) {
        return view.atMm(place.x(), place.y());
    }

    /** A sample of one closeness. */
    void sample(Spot topLeft, double width, double height, int closeness, boolean stretched) {
        double apart = APART * EVERY[closeness];
        if (stretched) {
            for (double y = apart / 2; y < height; y += apart) {
                pencil.line(Pen.THIN, topLeft.shifted(0, y), topLeft.shifted(width, y));
            }
        } else {
            for (double x = apart / 2; x < width; x += apart) {
                pencil.line(Pen.THIN, topLeft.shifted(x, 0), topLeft.shifted(x, height));
            }
        }
        pencil.outline(
                Pen.THIN,
                List.of(
                        topLeft,
                        topLeft.shifted(width, 0),
                        topLeft.shifted(width, height),
                        topLeft.shifted(0, height)));
    }
}
