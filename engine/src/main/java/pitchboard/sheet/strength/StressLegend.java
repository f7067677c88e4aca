package pitchboard.sheet.strength;

import java.util.function.DoubleFunction;
import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/**
 * What the strokes in the wood mean.
 *
 * @param words how a stress in N/mm² is written
 */
record StressLegend(Pencil pencil, StressHatching hatching, DoubleFunction<String> words) {
    private static final double WIDE = 12;
    private static final double HIGH = 5;

    void draw(Box box, String corners) {
        double y = box.top() + 4;
        pencil.text(
                Spot.of(box.left(), y), "Stress along the grain, under people and weight", Lettering.NAME, Align.LEFT);
        y += 4;
        row(box.left(), y, true, "stretched");
        row(box.left(), y + HIGH + 2, false, "pressed");
        pencil.circle(Pen.THIN, Spot.of(box.left() + 2, y + 2 * HIGH + 6.5), 1.6);
        pencil.text(
                Spot.of(box.left() + 6, y + 2 * HIGH + 7.4),
                "without strokes: less; " + corners,
                Lettering.NOTE,
                Align.LEFT);
    }

    private void row(double left, double top, boolean stretched, String name) {
        double base = top + HIGH / 2 + Lettering.NOTE.capHeight() / 2;
        pencil.text(Spot.of(left, base), name, Lettering.HEAD, Align.LEFT);
        for (int closeness = 1; closeness <= StressHatching.CLOSEST; closeness++) {
            double x = left + 20 + (closeness - 1) * 38;
            hatching.sample(Spot.of(x, top), WIDE, HIGH, closeness, stretched);
            String from = words.apply(closeness * hatching.stepMpa());
            pencil.text(Spot.of(x + WIDE + 1.5, base), "from " + from, Lettering.NOTE, Align.LEFT);
        }
    }
}
