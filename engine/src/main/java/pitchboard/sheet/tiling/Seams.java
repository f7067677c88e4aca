package pitchboard.sheet.tiling;

import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.CheckRuler;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.type.Lettering;

/** What one page says about its neighbours: match marks in the strips they share, and a key to all pages. */
final class Seams {
    private static final double KEY_HEIGHT = 5;
    private static final double KEY_WIDTH = 7;
    private static final double GAP = 5;

    private final Pages pages;
    private final Grid.Cell cell;
    private final Draft page;
    private final Pencil pencil;

    Seams(Pages pages, Grid.Cell cell, Draft page) {
        this.pages = pages;
        this.cell = cell;
        this.page = page;
        this.pencil = page.pencil();
    }

    void draw() {
        Grid grid = pages.grid();
        upright(cell.column() - 1, 0);
        upright(cell.column(), grid.windowWidth() - grid.overlap());
        level(cell.row() - 1, 0);
        level(cell.row(), grid.windowHeight() - grid.overlap());
        key();
    }

    /** Two marks in the strip between a column and the next, when both pages are there; both show them alike. */
    private void upright(int before, double across) {
        if (pages.has(before, cell.row()) && pages.has(before + 1, cell.row())) {
            String name = pages.name(before, cell.row()) + pages.name(before + 1, cell.row());
            Grid grid = pages.grid();
            mark(across + grid.overlap() / 2, grid.windowHeight() / 4, name + 1);
            mark(across + grid.overlap() / 2, grid.windowHeight() * 3 / 4, name + 2);
        }
    }

    private void level(int before, double down) {
        if (pages.has(cell.column(), before) && pages.has(cell.column(), before + 1)) {
            String name = pages.name(cell.column(), before) + pages.name(cell.column(), before + 1);
            Grid grid = pages.grid();
            mark(grid.windowWidth() / 4, down + grid.overlap() / 2, name + 1);
            mark(grid.windowWidth() * 3 / 4, down + grid.overlap() / 2, name + 2);
        }
    }

    private void mark(double across, double down, String name) {
        new Signs(pencil).match(page.room().topLeft().shifted(across, down), name);
    }

    /** All pages as small boxes, this one shaded, and how to lay them. */
    private void key() {
        double left = page.room().left() + CheckRuler.WIDTH + GAP;
        double top = page.room().bottom() - CheckRuler.HEIGHT;
        double height = Math.min(KEY_HEIGHT, CheckRuler.HEIGHT / pages.grid().rows());
        for (Grid.Cell other : pages.cells()) {
            Box box = new Box(left + other.column() * KEY_WIDTH, top + other.row() * height, KEY_WIDTH, height);
            List<Spot> corners = box.corners();
            if (other.isAt(cell.column(), cell.row())) {
                pencil.fill(Fill.SHADE, corners);
            }
            pencil.outline(Pen.RULE, corners);
        }
        double words = left + pages.grid().columns() * KEY_WIDTH + GAP;
        pencil.paragraph(
                Spot.of(words, top),
                page.room().right() - words,
                "**This is page " + pages.name(cell.column(), cell.row()) + " of "
                        + pages.cells().size()
                        + ".** Lay the pages over each other until match marks of the same name lie on each other, tape"
                        + " them, then check one long dimension with the tape.",
                Lettering.NOTE);
    }
}
