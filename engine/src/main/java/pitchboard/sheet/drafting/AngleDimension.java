package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Quantity;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;

/** Draws the size of a corner: an arc between its legs, ticked at both ends, the label beside its middle. */
public final class AngleDimension {
    private static final double FROM_ARC = 1.6;

    private final Pencil pencil;

    public AngleDimension(Pencil pencil) {
        this.pencil = pencil;
    }

    /**
     * Draws one.
     *
     * @param from direction of the first leg in degrees
     * @param sweep anticlockwise to the other leg, in degrees
     * @param radius of the arc in millimetres
     */
    public void at(Spot corner, double from, double sweep, double radius, Quantity says, String label) {
        List<Mark> strokes = new ArrayList<>();
        strokes.add(new Mark.Arc(pencil.of(), corner, radius, from, sweep, Pen.DIMENSION));
        strokes.add(tick(corner, from, radius));
        strokes.add(tick(corner, from + sweep, radius));
        Spot first = corner.toward(from, radius);
        Spot second = corner.toward(from + sweep, radius);
        Mark.Text text = pencil.draft().firstFree(places(corner, from + sweep / 2, radius, label));
        pencil.draft().add(new Mark.Dimension(pencil.of(), first, second, says, strokes, text));
    }

    private Mark tick(Spot corner, double direction, double radius) {
        Spot on = corner.toward(direction, radius);
        double half = DimensionLine.TICK / 2;
        return new Mark.Line(
                pencil.of(), List.of(on.toward(direction + 135, half), on.toward(direction - 45, half)), Pen.TICK);
    }

    private List<Mark.Text> places(Spot corner, double middle, double radius, String label) {
        Lettering lettering = Lettering.DIMENSION;
        double width = Typesetter.width(label, lettering);
        List<Mark.Text> places = new ArrayList<>();
        for (double out = radius + FROM_ARC; out < radius + 20; out += 3) {
            places.add(beyond(corner.toward(middle, out), middle, width, label, lettering));
        }
        places.add(beyond(corner.toward(middle, radius - FROM_ARC), middle + 180, width, label, lettering));
        return places;
    }

    /** The label as a level box that touches the spot with the side that faces back along the direction. */
    private Mark.Text beyond(Spot spot, double direction, double width, String label, Lettering lettering) {
        double radians = Math.toRadians(direction);
        double centreX = spot.x() + Math.cos(radians) * width / 2;
        double centreY = spot.y() - Math.sin(radians) * lettering.capHeight() / 2;
        return Typesetter.line(label, lettering)
                .at(pencil.of(), Spot.of(centreX, centreY + lettering.capHeight() / 2), 0, Align.CENTRE);
    }
}
