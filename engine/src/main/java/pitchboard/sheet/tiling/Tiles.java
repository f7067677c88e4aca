package pitchboard.sheet.tiling;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.CheckRuler;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.frame.Frame;

/** Spreads a true-size drawing over as few pages as its size needs, each with the check ruler. */
public final class Tiles {
    /** How much two neighbouring pages show of the same: enough for match marks and a strip of tape. */
    static final double OVERLAP = 14;

    private static final double STRIP = CheckRuler.HEIGHT + 2;
    private static final Box BOUNDLESS = new Box(-50_000, -50_000, 100_000, 100_000);

    private Tiles() {}

    /** A page without edges, to draw something true size on, wherever on it is handy. */
    public static Draft canvas(String id, String title) {
        return new Draft(id, title, BOUNDLESS);
    }

    /** What one page of the frame shows of a large drawing: draw within this size and it stays on one page. */
    public static Box pane(Frame frame) {
        return frame.room().withoutBottom(STRIP);
    }

    /** At most how many pages something of this size needs; for choosing which way round to draw it. */
    public static int pagesFor(Frame frame, double width, double height) {
        Grid grid = new Grid(
                new Box(0, 0, width, height), pane(frame).width(), pane(frame).height(), OVERLAP, 0, 0);
        return grid.columns() * grid.rows();
    }

    /** Cuts the drawing into pages; one page, without match marks, when it fits. */
    public static List<Draft> over(Frame frame, Draft canvas) {
        Box pane = pane(frame);
        Pages pages = Pages.fewest(canvas.marks(), pane.width(), pane.height(), OVERLAP);
        List<Draft> drafts = new ArrayList<>();
        for (Grid.Cell cell : pages.cells()) {
            drafts.add(page(frame, canvas, pages, cell));
        }
        return drafts;
    }

    private static Draft page(Frame frame, Draft canvas, Pages pages, Grid.Cell cell) {
        Draft page = blank(frame, canvas, pages, cell).scaled(canvas.scale());
        if (page.isBlank()) {
            return page;
        }
        Pane pane = new Pane(pages.grid().window(cell), page, page.room().topLeft());
        for (Mark mark : canvas.marks()) {
            pane.copy(mark);
        }
        if (!pages.isOne()) {
            new Seams(pages, cell, page).draw();
        }
        Spot ruler = Spot.of(page.room().left(), page.room().bottom() - CheckRuler.HEIGHT);
        new CheckRuler(page.pencil()).at(ruler);
        return page;
    }

    private static Draft blank(Frame frame, Draft canvas, Pages pages, Grid.Cell cell) {
        if (pages.isOne()) {
            return frame.draft(canvas.id(), canvas.title());
        }
        int number = pages.number(cell.column(), cell.row());
        String name = pages.name(cell.column(), cell.row());
        return frame.draft(canvas.id() + "-" + number, canvas.title() + ", page " + name);
    }
}
