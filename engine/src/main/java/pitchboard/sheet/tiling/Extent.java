package pitchboard.sheet.tiling;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.TextBox;

/** How large a drawing is. */
final class Extent {
    private Extent() {}

    /** The smallest box around all marks; zones do not count. */
    static Box of(List<Mark> marks) {
        List<Spot> spots = new ArrayList<>();
        marks.forEach(mark -> gather(mark, spots));
        return Box.around(spots);
    }

    private static void gather(Mark mark, List<Spot> spots) {
        if (mark instanceof Mark.Line line) {
            spots.addAll(line.spots());
        } else if (mark instanceof Mark.Shape shape) {
            spots.addAll(shape.spots());
        } else if (mark instanceof Mark.Arc arc) {
            round(arc.centre(), arc.radius(), spots);
        } else if (mark instanceof Mark.Disc disc) {
            round(disc.centre(), disc.radius(), spots);
        } else if (mark instanceof Mark.Text text) {
            spots.addAll(TextBox.of(text).corners());
        } else if (mark instanceof Mark.Dimension dimension) {
            dimension.strokes().forEach(stroke -> gather(stroke, spots));
            gather(dimension.label(), spots);
        }
    }

    private static void round(Spot centre, double radius, List<Spot> spots) {
        spots.add(centre.shifted(-radius, -radius));
        spots.add(centre.shifted(radius, radius));
    }
}
