package pitchboard.documents;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.measure.Angle;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.AngleDimension;
import pitchboard.sheet.drafting.CheckRuler;
import pitchboard.sheet.drafting.Dimensions;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.drafting.Hatch;
import pitchboard.sheet.drafting.Material;
import pitchboard.sheet.drafting.Notes;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.Scale;
import pitchboard.sheet.drafting.Signs;
import pitchboard.sheet.drafting.Station;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.frame.Frame;
import pitchboard.sheet.frame.TitleBlock;
import pitchboard.sheet.table.Column;
import pitchboard.sheet.table.Table;
import pitchboard.sheet.tiling.Tiles;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** Sheets that show everything the drawing machinery can do: six steps, all pens, a table over two pages. */
public final class Specimen {
    private static final Length RISE = Length.inches(7, 11, 16);
    private static final Length RUN = Length.inches(10);
    private static final int STEPS = 6;
    private static final PartRef STRINGER = PartRef.of("stringer-left");

    private Specimen() {}

    public static List<Sheet> sheets(Paper paper) {
        Frame frame = new Frame(
                paper,
                new TitleBlock(
                        new Title("Boathouse, stair to the sail loft", "The sailing club", "North jetty", "2026-05-12"),
                        "IRC 2021",
                        "7c1e 90b4",
                        "Local code and the inspector decide. Measure twice; check the first rise before the treads go on."));
        List<Draft> drafts = new ArrayList<>();
        drafts.add(elevation(frame));
        drafts.add(pens(frame));
        drafts.addAll(pitchBoard(frame));
        drafts.addAll(marks(frame));
        return frame.bind(drafts);
    }

    /** Feet, inches and sixteenths, as the specimen's crew reads them. */
    private static String words(Length length) {
        long sixteenths = length.rounded(Graduation.SIXTEENTH_INCH).wholeTimes(Length.inches(0, 1, 16));
        long feet = sixteenths / 192;
        long inches = sixteenths / 16 % 12;
        long rest = sixteenths % 16;
        long divisor = rest == 0 ? 1 : Long.lowestOneBit(rest);
        String fraction = rest == 0 ? "" : rest / divisor + "\u2044" + 16 / divisor;
        String whole = inches == 0 && rest > 0 && feet == 0 ? "" : inches + (rest > 0 ? " " : "");
        return (feet > 0 ? feet + "′-" : "") + whole + fraction + "″";
    }

    private static Outline stringer() {
        List<Point> corners = new ArrayList<>();
        Point corner = Point.of(Length.ZERO, Length.ZERO);
        corners.add(corner);
        for (int step = 0; step < STEPS; step++) {
            corner = corner.shifted(Length.ZERO, RISE);
            corners.add(corner);
            corner = corner.shifted(RUN, Length.ZERO);
            corners.add(corner);
        }
        corners.add(corner.shifted(Length.ZERO, Length.inches(-12)));
        corners.add(Point.of(Length.inches(5), Length.ZERO));
        return Outline.through(corners);
    }

    private static Draft elevation(Frame frame) {
        Outline stringer = stringer();
        Box room = frame.room().withoutRight(66).inset(14, 17);
        View view = View.fitting(room, stringer.corners(), Scale.INCH);
        Draft draft = frame.draft("elevation", "Elevation").scaled(view.scale());
        Pencil pencil = draft.pencil(STRINGER);
        pencil.outline(Pen.OUTLINE, Fill.LIGHT, view.at(stringer));
        Spot foot = view.atMm(0, 0);
        List<Spot> ground =
                List.of(foot.shifted(-12, 0), foot.shifted(44, 0), foot.shifted(44, 5), foot.shifted(-12, 5));
        new Hatch(draft.pencil(PartRef.of("pad"))).inside(ground, Material.CONCRETE);
        draft.pencil().line(Pen.CUT, ground.get(0), ground.get(1));
        Dimensions dimensions = new Dimensions(pencil, Specimen::words);
        List<Station> rises = new ArrayList<>();
        List<Station> runs = new ArrayList<>();
        List<Point> corners = stringer.corners();
        double right = view.around(corners).right();
        rises.add(Station.of(Length.ZERO, Spot.of(right, foot.y())));
        runs.add(Station.of(Length.ZERO, Spot.of(foot.x(), foot.y() + 5)));
        for (int i = 1; i <= STEPS; i++) {
            Spot tread = view.at(corners.get(2 * i));
            rises.add(Station.of(RISE.times(i), Spot.of(right, tread.y())));
            runs.add(Station.of(RUN.times(i), Spot.of(tread.x(), foot.y() + 5)));
        }
        dimensions.plumbWithOverall(right + 10, rises);
        dimensions.levelWithOverall(foot.y() + 16, runs);
        Pitch pitch = Pitch.of(RISE, RUN);
        dimensions.sloping(
                9,
                Station.of(Length.ZERO, view.at(corners.get(1))),
                Station.of(pitch.alongForLevel(RUN), view.at(corners.get(3))),
                Station.of(pitch.alongForLevel(RUN.times(2)), view.at(corners.get(5))));
        new AngleDimension(pencil).at(view.at(corners.get(14)), 0, pitch.degrees(), 30, pitch, "37.6°");
        new Notes(pencil, 42)
                .onEdge(
                        view.at(corners.get(7)).shifted(0, 6),
                        view.at(corners.get(7)).shifted(-22, -14),
                        "first cut **7 1\u20448″**: rise less tread");
        new Notes(pencil, 42)
                .onArea(
                        view.at(corners.get(6)).shifted(6, 12),
                        view.at(corners.get(6)).shifted(42, 40),
                        "2 × 12, cut");
        legend(draft, frame.room().rightPart(60));
        return draft;
    }

    private static void legend(Draft draft, Box box) {
        Pencil pencil = draft.pencil();
        pencil.text(Spot.of(box.left(), box.top() + 4), "Before you cut", Lettering.NAME, Align.LEFT);
        double y = pencil.paragraph(
                Spot.of(box.left(), box.top() + 8),
                box.width(),
                "• The first cut is **7 1\u20448″**, not 7 11\u204416″: the tread goes on top of it.\n"
                        + "• Mark from one datum with the tape held still; never step off one rise after another. "
                        + "105 3\u20444″ over 14 is 7 31\u204456″, which no tape has.\n"
                        + "• √(7.5² + 10²) = 12.5; ≤ 7 3\u20444″, ≥ 10″, ± 1\u204416″, 37.6° · 8′-9 3\u20444″ × 2 ÷ 3 − 1.",
                Lettering.NOTE);
        Signs signs = new Signs(pencil);
        signs.arrow(Spot.of(box.left() + 14, y + 14), Spot.of(box.left() + 44, y + 14), "UP");
        signs.grain(Spot.of(box.left() + 30, y + 24), 0, 36);
        signs.breakLine(Spot.of(box.left() + 6, y + 34), Spot.of(box.left() + 54, y + 34));
        signs.match(Spot.of(box.left() + 12, y + 46), "A1");
        signs.balloon(Spot.of(box.left() + 30, y + 46), "S1");
        signs.level(Spot.of(box.left() + 40, y + 48), 18, "loft");
    }

    private static Draft pens(Frame frame) {
        Draft draft = frame.draft("pens", "Pens, hatching, ruler").scaled(Scale.TRUE_SIZE);
        Box room = frame.room();
        Pencil pencil = draft.pencil();
        double y = room.top() + 5;
        for (Pen pen : Pen.values()) {
            pencil.text(Spot.of(room.left(), y + 0.8), pen.name(), Lettering.NOTE, Align.LEFT);
            pencil.line(pen, Spot.of(room.left() + 28, y), Spot.of(room.left() + 110, y));
            y += 6;
        }
        double x = room.left() + 125;
        for (Material material : Material.values()) {
            List<Spot> notched = List.of(
                    Spot.of(x, room.top()),
                    Spot.of(x + 28, room.top()),
                    Spot.of(x + 28, room.top() + 24),
                    Spot.of(x + 14, room.top() + 24),
                    Spot.of(x + 14, room.top() + 12),
                    Spot.of(x, room.top() + 12));
            new Hatch(pencil).inside(notched, material);
            pencil.outline(Pen.CUT, notched);
            pencil.text(Spot.of(x, room.top() + 30), material.name(), Lettering.SMALL, Align.LEFT);
            x += 33;
        }
        sizes(pencil, Spot.of(room.left() + 125, room.top() + 40));
        narrow(draft, Spot.of(room.left() + 112, room.top() + 92));
        new CheckRuler(pencil).at(Spot.of(room.left(), room.bottom() - CheckRuler.HEIGHT));
        return draft;
    }

    /** Too large for one page at true size. */
    private static List<Draft> pitchBoard(Frame frame) {
        Draft canvas = Tiles.canvas("pitch-board", "Pitch board").scaled(Scale.TRUE_SIZE);
        View view = View.of(Scale.TRUE_SIZE, Spot.of(0, 0));
        List<Point> corners =
                List.of(Point.of(Length.ZERO, Length.ZERO), Point.of(RUN, RISE), Point.of(Length.ZERO, RISE));
        Pencil pencil = canvas.pencil(PartRef.of("pitch-board"));
        pencil.outline(Pen.OUTLINE, Fill.LIGHT, view.at(corners));
        pencil.circle(Pen.PENCIL, view.atMm(120, 140), 30);
        Dimensions dimensions = new Dimensions(pencil, Specimen::words);
        dimensions.level(view.at(corners.get(1)).y() - 9, view.level(corners.get(2)), view.level(corners.get(1)));
        dimensions.plumb(view.at(corners.get(0)).x() - 9, view.plumb(corners.get(0)), view.plumb(corners.get(2)));
        pencil.text(view.atMm(20, 165), "Pitch board: one rise by one run", Lettering.NAME, Align.LEFT);
        return Tiles.over(frame, canvas);
    }

    private static void sizes(Pencil pencil, Spot top) {
        List<Lettering> all = List.of(
                Lettering.SMALL, Lettering.NOTE, Lettering.HEAD, Lettering.DIMENSION, Lettering.NAME, Lettering.TITLE);
        double y = top.y();
        for (Lettering lettering : all) {
            y += lettering.lineHeight();
            pencil.text(Spot.of(top.x(), y), "8′-9 3\u20444″ throat 5 15\u204416″ 2686 mm", lettering, Align.LEFT);
        }
    }

    /** Gaps too narrow for their labels. */
    private static void narrow(Draft draft, Spot start) {
        Dimensions dimensions = new Dimensions(draft.pencil(), Specimen::words);
        List<Station> stations = new ArrayList<>();
        Length at = Length.ZERO;
        for (int sixteenths : List.of(0, 3, 40, 3, 5, 30, 4)) {
            at = at.plus(Length.inches(0, sixteenths, 16));
            stations.add(Station.of(at, start.shifted(at.approxMm(), 0)));
        }
        draft.pencil().line(Pen.OUTLINE, start, start.shifted(at.approxMm(), 0));
        dimensions.levelWithOverall(start.y() + 12, stations);
        new AngleDimension(draft.pencil()).at(start.shifted(100, 10), 30, 120, 12, Angle.degrees(120), "120°");
    }

    private static List<Draft> marks(Frame frame) {
        Table table = Table.of(
                Column.checkBox("Done", 16),
                Column.left("Mark", 16).bold(),
                Column.right("From datum", 26),
                Column.right("Exact, in", 26),
                Column.rest("What to do"),
                Column.left("Source", 46).small());
        table.heading("Left stringer, along the top edge");
        for (int i = 1; i <= 40; i++) {
            Length at = Pitch.of(RISE, RUN).alongForLevel(RUN.times(i));
            String words = i % 4 == 0
                    ? "Square the riser cut off the mark, then check it against the pitch board before the saw comes near; "
                            + "the throat must stay 5 1\u20444″ everywhere"
                    : "Square the riser cut off the mark";
            table.row(
                    STRINGER,
                    List.of(
                            "",
                            "M" + i,
                            words(at),
                            Decimals.of(at.approxMm() / 25.4),
                            words,
                            "common practice, no source"));
        }
        return table.over(page -> frame.draft("marks-" + page, "Running marks"));
    }
}
