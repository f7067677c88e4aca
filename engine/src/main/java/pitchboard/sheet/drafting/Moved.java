package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;

/** Marks at another place on paper. */
final class Moved {
    private static final double DEGREES_A_STEP = 3;

    private Moved() {}

    static Mark by(Mark mark, double right, double down) {
        if (mark instanceof Mark.Line line) {
            return new Mark.Line(line.of(), all(line.spots(), right, down), line.pen());
        }
        if (mark instanceof Mark.Shape shape) {
            return new Mark.Shape(shape.of(), all(shape.spots(), right, down), shape.pen(), shape.fill());
        }
        if (mark instanceof Mark.Arc arc) {
            return new Mark.Arc(
                    arc.of(), arc.centre().shifted(right, down), arc.radius(), arc.from(), arc.sweep(), arc.pen());
        }
        if (mark instanceof Mark.Disc disc) {
            return new Mark.Disc(disc.of(), disc.centre().shifted(right, down), disc.radius(), disc.pen(), disc.fill());
        }
        if (mark instanceof Mark.Dimension dimension) {
            return dimension(dimension, right, down);
        }
        if (mark instanceof Mark.Text text) {
            return text(text, right, down);
        }
        Mark.Zone zone = (Mark.Zone) mark;
        Box box = zone.box();
        return new Mark.Zone(
                zone.of(), zone.name(), new Box(box.left() + right, box.top() + down, box.width(), box.height()));
    }

    private static Mark.Text text(Mark.Text text, double right, double down) {
        return new Mark.Text(text.of(), text.at().shifted(right, down), text.turn(), text.runs(), text.reads());
    }

    private static Mark dimension(Mark.Dimension dimension, double right, double down) {
        return new Mark.Dimension(
                dimension.of(),
                dimension.from().shifted(right, down),
                dimension.to().shifted(right, down),
                dimension.says(),
                dimension.strokes().stream()
                        .map(stroke -> by(stroke, right, down))
                        .toList(),
                text(dimension.label(), right, down));
    }

    private static List<Spot> all(List<Spot> spots, double right, double down) {
        return spots.stream().map(spot -> spot.shifted(right, down)).toList();
    }

    /** An arc as short straight steps, for cutting it. */
    static List<Spot> spotsOn(Mark.Arc arc) {
        int steps = Math.max(2, (int) Math.ceil(Math.abs(arc.sweep()) / DEGREES_A_STEP));
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            spots.add(arc.centre().toward(arc.from() + arc.sweep() * i / steps, arc.radius()));
        }
        return spots;
    }
}
