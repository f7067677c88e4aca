package pitchboard.sheet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pitchboard.measure.Length;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Lettering;
import pitchboard.sheet.type.Typesetter;

/**
 * Draws dimension strings: one dimension for each gap between stations, and an overall one outside them when wished.
 * Labels stand over the line, reading from below or from the right; one that has no room moves out with a leader.
 */
public final class Dimensions {
    /** From one string to the next outside it, in millimetres. */
    public static final double STRING_GAP = 9;

    private final Pencil pencil;
    private final Function<Length, String> words;
    private final Lettering lettering;

    /**
     * Dimensions in the lettering of dimensions.
     *
     * @param words how the crew's tape shows a length
     */
    public Dimensions(Pencil pencil, Function<Length, String> words) {
        this(pencil, words, Lettering.DIMENSION);
    }

    public Dimensions(Pencil pencil, Function<Length, String> words, Lettering lettering) {
        this.pencil = pencil;
        this.words = words;
        this.lettering = lettering;
    }

    /** The same hand for another part. */
    public Dimensions of(Pencil other) {
        return new Dimensions(other, words, lettering);
    }

    /** A level string at a height on the page. */
    public void level(double y, List<Station> stations) {
        string(new DimensionLine(Spot.of(0, y), 0), stations);
    }

    public void level(double y, Station... stations) {
        level(y, List.of(stations));
    }

    /**
     * A level string, and the overall dimension one string further from the object when there is more than one gap. The
     * overall one is drawn first, so that labels crowded out of the chain keep clear of it.
     */
    public void levelWithOverall(double y, List<Station> stations) {
        if (stations.size() > 2) {
            double away = y < stations.get(0).at().y() ? -STRING_GAP : STRING_GAP;
            level(y + away, ends(stations));
        }
        level(y, stations);
    }

    /** A plumb string at a distance from the page's left edge. */
    public void plumb(double x, List<Station> stations) {
        string(new DimensionLine(Spot.of(x, 0), 90), stations);
    }

    public void plumb(double x, Station... stations) {
        plumb(x, List.of(stations));
    }

    /** A plumb string, and the overall dimension one string further from the object when there is more than one gap. */
    public void plumbWithOverall(double x, List<Station> stations) {
        if (stations.size() > 2) {
            double away = x < stations.get(0).at().x() ? -STRING_GAP : STRING_GAP;
            plumb(x + away, ends(stations));
        }
        plumb(x, stations);
    }

    /**
     * A string along a slope, parallel to the line from the first to the last station.
     *
     * @param off millimetres from the first station to the line: to the left of the way from first to last, or to the
     *     right when negative
     */
    public void sloping(double off, List<Station> stations) {
        List<Station> ends = ends(stations);
        double direction = ends.get(0).at().directionTo(ends.get(1).at());
        string(new DimensionLine(ends.get(0).at().toward(direction + 90, off), direction), stations);
    }

    public void sloping(double off, Station... stations) {
        sloping(off, List.of(stations));
    }

    private static List<Station> ends(List<Station> stations) {
        return List.of(stations.get(0), stations.get(stations.size() - 1));
    }

    private void string(DimensionLine line, List<Station> stations) {
        List<Station> ordered = new ArrayList<>(stations);
        ordered.sort((a, b) -> Double.compare(line.along(a.at()), line.along(b.at())));
        for (int i = 1; i < ordered.size(); i++) {
            gap(line, ordered.get(i - 1), ordered.get(i), i == 1, i == ordered.size() - 1);
        }
    }

    private void gap(DimensionLine line, Station from, Station to, boolean isFirst, boolean isLast) {
        Length says = to.along().minus(from.along()).abs();
        DimensionLabels labels =
                new DimensionLabels(pencil.of(), line, Typesetter.line(words.apply(says), lettering), lettering);
        boolean fits = labels.fits(from.at(), to.at());
        List<Mark.Text> places =
                fits ? labels.inside(from.at(), to.at()) : labels.outside(from.at(), to.at(), isFirst, isLast);
        Mark.Text label = pencil.draft().firstFree(places);
        List<Mark> strokes = new ArrayList<>();
        if (isFirst) {
            strokes.addAll(line.end(pencil.of(), from.at()));
        }
        strokes.addAll(line.end(pencil.of(), to.at()));
        strokes.addAll(
                new DimensionStem(pencil.of(), line, labels, label, fits).strokes(from.at(), to.at(), isFirst, isLast));
        pencil.draft().add(new Mark.Dimension(pencil.of(), from.at(), to.at(), says, strokes, label));
    }
}
