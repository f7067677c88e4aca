package pitchboard.sheet.papers;

import java.util.ArrayList;
import java.util.List;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.CheckRuler;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.drafting.Tiles;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** Spreads a drawing at true size over as many pages as it needs, with match marks and a ruler on each. */
final class TrueSize {
    /** What neighbouring pages share, in millimetres. */
    private static final double OVERLAP = 16;

    private static final double RULER_ROOM = CheckRuler.HEIGHT + 3;

    /** A drawing that is wanted at true size. */
    interface Drawing {
        /** What it covers on a boundless sheet, dimensions included. */
        Box room(View view);

        void draw(Draft draft, View view);

        /** Corners worth marking so that pages can be laid over each other and checked. */
        List<Point> matchPoints();
    }

    private final Frame frame;
    private final String id;
    private final String title;

    TrueSize(Frame frame, String id, String title) {
        this.frame = frame;
        this.id = id;
        this.title = title;
    }

    List<Draft> sheets(Drawing drawing) {
        View view = View.of(Scale.TRUE_SIZE, Spot.of(0, 0));
        Box whole = drawing.room(view);
        Draft boundless = new Draft(id, title, whole);
        drawing.draw(boundless, view);
        Box page = frame.room().withoutBottom(RULER_ROOM);
        Tiles tiles = Tiles.over(whole, page, OVERLAP);
        List<Draft> pages = new ArrayList<>();
        for (Tiles.Tile tile : tiles.list()) {
            List<Mark> marks = tiles.cut(boundless.marks(), tile);
            if (!marks.isEmpty()) {
                pages.add(page(tile, marks, tiles));
            }
        }
        return pages;
    }

    private Draft page(Tiles.Tile tile, List<Mark> marks, Tiles tiles) {
        boolean many = tiles.list().size() > 1;
        Draft draft = frame.draft(many ? id + "-" + tile.name() : id, many ? title + ", " + tile.name() : title);
        marks.forEach(draft::add);
        if (many) {
            tiles.matchMarks(tile).forEach(match -> new Signs(draft.pencil()).match(match.at(), match.name()));
            pageKey(draft, tile, tiles);
        }
        new CheckRuler(draft.pencil())
                .at(draft.room().bottomPart(CheckRuler.HEIGHT).topLeft());
        return draft.scaled(Scale.TRUE_SIZE);
    }

    /** A small picture of how the pages lie, this one filled. */
    private static void pageKey(Draft draft, Tiles.Tile tile, Tiles tiles) {
        Box corner = draft.room().bottomPart(CheckRuler.HEIGHT).rightPart(60);
        tiles.key(corner.rightPart(28)).forEach((name, box) -> {
            if (name.equals(tile.name())) {
                draft.pencil().outline(Pen.OUTLINE, Fill.SHADE, box.corners());
            } else {
                draft.pencil().box(Pen.THIN, box);
            }
            draft.pencil()
                    .text(
                            Spot.of(box.centre().x(), box.centre().y() + Lettering.SMALL.capHeight() / 2),
                            name,
                            Lettering.SMALL,
                            Align.CENTRE);
        });
        draft.pencil()
                .text(
                        Spot.of(corner.right() - 31, corner.top() + 6),
                        "pages overlap: circles over circles",
                        Lettering.SMALL,
                        Align.RIGHT);
    }
}
