package pitchboard.sheet.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import pitchboard.carry.elements.ByElements;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.strength.elements.StressGrid;
import pitchboard.strength.elements.mesh.Xy;

/**
 * The stress along the grain across the board where it is stretched most, beside the straight line of the throat as a plain
 * beam.
 *
 * @param words how a stress in N/mm² is written
 */
record SectionDrawing(Pencil pencil, ByElements found, DoubleFunction<String> words) {
    private static final double NAME = 7;
    private static final double AXIS = 9;
    private static final double APART_MM = 1;
    /** Toward a corner the curve is broken off: so far it goes beyond the plain beam. */
    private static final double MOST = 1.25;

    /** @param box it fills it */
    void draw(Box box) {
        StressGrid grid = found.solved().picture().grid(APART_MM);
        StressSection section = StressSection.through(found.tension().where(), grid);
        double beam = beam(grid, section);
        double scale = Math.max(Math.abs(beam), found.tension().mpa().value());
        Box area = box.withoutTop(NAME).withoutBottom(AXIS);
        double middle = area.centre().x();
        double perMpa = area.width() / 2 / (MOST * scale);
        double rows = section.lastRow() - section.firstRow() + 1;
        double perRow = area.height() / rows;
        pencil.text(box.topLeft().shifted(0, 3), "Across the board, A to A", Lettering.NAME, Align.LEFT);
        pencil.line(Pen.THIN, Spot.of(middle, area.top()), Spot.of(middle, area.bottom()));
        pencil.line(Pen.OUTLINE, Spot.of(area.left(), area.top()), Spot.of(area.right(), area.top()));
        pencil.line(Pen.OUTLINE, Spot.of(area.left(), area.bottom()), Spot.of(area.right(), area.bottom()));
        // Stretched to the right.
        double depth = Math.min(area.height(), found.beam().depthMm() / APART_MM * perRow);
        pencil.line(
                Pen.HIDDEN,
                Spot.of(middle - beam * perMpa, area.bottom() - depth),
                Spot.of(middle + beam * perMpa, area.bottom()));
        curve(grid, section, area, perMpa, MOST * scale);
        double low = area.bottom() + 3.4;
        pencil.text(Spot.of(area.left(), low), "pressed", Lettering.NOTE, Align.LEFT);
        pencil.text(Spot.of(middle, low), "0", Lettering.NOTE, Align.CENTRE);
        pencil.text(
                Spot.of(middle + found.tension().mpa().value() * perMpa, low),
                words.apply(found.tension().mpa().value()),
                Lettering.HEAD,
                Align.CENTRE);
        pencil.text(
                Spot.of(area.left(), low + 4),
                "thick: finite elements; dashed: the throat as a plain beam" + (found.overPost() ? " here, " : ", ")
                        + words.apply(Math.abs(beam)),
                Lettering.SMALL,
                Align.LEFT);
    }

    /** Begun where it comes into the picture, above the edge of a post, and broken off where it leaves it. */
    private void curve(StressGrid grid, StressSection section, Box area, double perMpa, double most) {
        double perRow = area.height() / (section.lastRow() - section.firstRow() + 1);
        List<Spot> curve = new ArrayList<>();
        for (int row = section.firstRow(); row <= section.lastRow(); row++) {
            double stress = grid.along(row, section.column());
            if (Math.abs(stress) <= most) {
                double up = row - section.firstRow() + 0.5;
                curve.add(Spot.of(area.centre().x() + stress * perMpa, area.bottom() - up * perRow));
            } else if (!curve.isEmpty()) {
                break;
            }
        }
        pencil.line(Pen.CUT, curve);
    }

    /**
     * At the lower edge, in N/mm²: where the plain beam bends most; over a post here, where either edge may be the one that
     * is stretched.
     */
    private double beam(StressGrid grid, StressSection section) {
        if (!found.overPost()) {
            return found.tension().mpa().value() / found.throat().stressRatio();
        }
        Xy low = grid.at(section.firstRow(), section.column());
        Xy high = grid.at(section.lastRow(), section.column());
        double toMiddle = found.beam().depthMm() / 2 / low.distanceTo(high);
        return found.bendingMpaAt(low.toward(high, toMiddle).x());
    }
}
