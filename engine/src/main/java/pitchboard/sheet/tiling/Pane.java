package pitchboard.sheet.tiling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.sheet.Box;
import pitchboard.sheet.Mark;
import pitchboard.sheet.PartRef;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Draft;
import pitchboard.sheet.type.TextBox;

/** Copies what one window shows of a large drawing to its place on a page, cut off at the window's edges. */
public final class Pane {
    private static final double STEP_DEGREES = 3;

    private final Box window;
    private final Clip clip;
    private final double right;
    private final double down;
    private final Draft page;

    /**
     * A window and where it goes.
     *
     * @param to the top left corner of the window on the page
     */
    public Pane(Box window, Draft page, Spot to) {
        this.window = window;
        this.clip = new Clip(window);
        this.right = to.x() - window.left();
        this.down = to.y() - window.top();
        this.page = page;
    }

    public void copy(Mark mark) {
        if (mark instanceof Mark.Line line) {
            line(line.of(), line.pen(), line.spots());
        } else if (mark instanceof Mark.Shape shape) {
            shape(shape);
        } else if (mark instanceof Mark.Arc arc) {
            line(arc.of(), arc.pen(), flattened(arc.centre(), arc.radius(), arc.from(), arc.sweep()));
        } else if (mark instanceof Mark.Disc disc) {
            List<Spot> round = flattened(disc.centre(), disc.radius(), 0, 360);
            shape(new Mark.Shape(disc.of(), round.subList(1, round.size()), disc.pen(), disc.fill()));
        } else if (mark instanceof Mark.Text text) {
            text(text);
        } else if (mark instanceof Mark.Dimension dimension) {
            dimension(dimension);
        }
    }

    private void line(PartRef of, Pen pen, List<Spot> spots) {
        for (List<Spot> piece : clip.line(spots)) {
            page.add(new Mark.Line(of, moved(piece), pen));
        }
    }

    private void shape(Mark.Shape shape) {
        if (shape.spots().stream().allMatch(window::contains)) {
            page.add(new Mark.Shape(shape.of(), moved(shape.spots()), shape.pen(), shape.fill()));
            return;
        }
        List<Spot> area = clip.area(shape.spots());
        if (shape.fill().isPresent() && area.size() > 2) {
            page.add(new Mark.Shape(shape.of(), moved(area), Optional.empty(), shape.fill()));
        }
        if (shape.pen().isPresent()) {
            List<Spot> round = new ArrayList<>(shape.spots());
            round.add(round.get(0));
            line(shape.of(), shape.pen().get(), round);
        }
    }

    /** The circle in short strokes, so that it can be cut. */
    private static List<Spot> flattened(Spot centre, double radius, double from, double sweep) {
        int steps = Math.max(1, (int) Math.ceil(Math.abs(sweep) / STEP_DEGREES));
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            spots.add(centre.toward(from + sweep * i / steps, radius));
        }
        return spots;
    }

    /** Text is shown by every window that holds all of it, and by the one that holds its middle: moved in there. */
    private void text(Mark.Text text) {
        Box place = TextBox.of(text).box();
        if (window.contains(place)) {
            page.add(moved(text, 0, 0));
        } else if (window.contains(place.centre())) {
            double inRight = Math.max(0, window.left() - place.left()) - Math.max(0, place.right() - window.right());
            double inDown = Math.max(0, window.top() - place.top()) - Math.max(0, place.bottom() - window.bottom());
            page.add(moved(text, inRight, inDown));
        }
    }

    private void dimension(Mark.Dimension dimension) {
        boolean isWhole = window.contains(TextBox.of(dimension.label()).box())
                && window.contains(dimension.from())
                && window.contains(dimension.to());
        if (!isWhole) {
            dimension.strokes().forEach(this::copy);
            text(dimension.label());
            return;
        }
        Draft strokes = new Draft("", "", page.room());
        Pane same = new Pane(window, strokes, Spot.of(window.left() + right, window.top() + down));
        dimension.strokes().forEach(same::copy);
        page.add(new Mark.Dimension(
                dimension.of(),
                dimension.from().shifted(right, down),
                dimension.to().shifted(right, down),
                dimension.says(),
                strokes.marks(),
                moved(dimension.label(), 0, 0)));
    }

    private Mark.Text moved(Mark.Text text, double further, double lower) {
        return new Mark.Text(
                text.of(), text.at().shifted(right + further, down + lower), text.turn(), text.runs(), text.reads());
    }

    private List<Spot> moved(List<Spot> spots) {
        return spots.stream().map(spot -> spot.shifted(right, down)).toList();
    }
}
