package pitchboard.sheet.strength;

import java.util.List;
import pitchboard.carry.elements.ByElements;
import pitchboard.measure.QuantityText;
import pitchboard.measure.Tape;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.drafting.View;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;
import pitchboard.strength.Force;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.elements.EdgeLoad;
import pitchboard.strength.elements.Peak;
import pitchboard.strength.elements.Reaction;
import pitchboard.strength.elements.StressGrid;
import pitchboard.strength.elements.mesh.Polygon;
import pitchboard.strength.elements.mesh.Xy;

/** The stringer as it stands with its stress along the grain, what presses on it and what holds it. */
final class StressDrawing {
    private static final double ARROW = 6;
    private static final double HEAD = 1.8;
    private static final double LEADER = 11;
    private static final double OUTSIDE = 3;
    /** How much of a post under the board is shown below its shorter face. */
    private static final double POST = 4;

    private final Pencil pencil;
    private final ByElements found;
    private final Units units;
    private final Tape tape;
    private final View view;
    private final StressHatching hatching;

    StressDrawing(Pencil pencil, ByElements found, Units units, Tape tape, Box room) {
        this.pencil = pencil;
        this.found = found;
        this.units = units;
        this.tape = tape;
        Box inside = new Box(room.left() + 2, room.top() + ARROW, room.width() - 10, room.height() - ARROW - 14);
        this.view = PlateView.fitting(inside, found.plate());
        this.hatching = new StressHatching(pencil, view, step(units, found));
    }

    /** A round number, of which the largest tension holds four and something. */
    private static double step(Units units, ByElements found) {
        double most = found.tension().mpa().value();
        double one = units == Units.POUNDS ? Stress.psi(1).nPerMm2() : 1;
        double wanted = most / one / 4;
        double power = 1e-3;
        while (power * 10 <= wanted) {
            power *= 10;
        }
        double[] round = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8};
        double best = round[0];
        for (double each : round) {
            best = each * power <= wanted ? each : best;
        }
        return best * power * one;
    }

    StressHatching hatching() {
        return hatching;
    }

    /** How many millimetres of paper one of the board takes. */
    double factor() {
        return view.scale().factor();
    }

    void draw() {
        List<Spot> outline = spots(found.plate().outline());
        StressGrid grid = found.solved().picture().grid(StressHatching.APART / factor());
        hatching.draw(grid);
        section(grid);
        corners();
        pencil.outline(Pen.OUTLINE, outline);
        found.plate().loads().forEach(this::load);
        found.solved().reactions().forEach(this::reaction);
        peak();
    }

    /** Where the stress is drawn across the board: from A to A through the place that is stretched most. */
    private void section(StressGrid grid) {
        StressSection section = StressSection.through(found.tension().where(), grid);
        Xy low = grid.at(section.firstRow(), section.column());
        Xy high = grid.at(section.lastRow(), section.column());
        Spot below = spot(low.toward(high, -OUTSIDE / factor() / low.distanceTo(high)));
        Spot above = spot(low.toward(high, 1 + OUTSIDE / factor() / low.distanceTo(high)));
        pencil.line(Pen.CENTRE, below, above);
        pencil.text(below.shifted(0.6, 3), "A", Lettering.HEAD, Align.LEFT);
        pencil.text(above.shifted(-0.6, -0.8), "A", Lettering.HEAD, Align.RIGHT);
    }

    private List<Spot> spots(List<Xy> places) {
        return places.stream().map(this::spot).toList();
    }

    private Spot spot(Xy place) {
        return view.atMm(place.x(), place.y());
    }

    /** Nothing is told of the stress so near to a sharp corner. */
    private void corners() {
        double radius = found.solved().awayMm() * factor();
        for (Xy corner : new Polygon(found.plate().outline()).inwardCorners()) {
            pencil.dot(Fill.WHITE, spot(corner), radius);
            pencil.circle(Pen.THIN, spot(corner), radius);
        }
    }

    private void load(EdgeLoad load) {
        for (double share : new double[] {0.2, 0.5, 0.8}) {
            Spot to = spot(load.from().toward(load.to(), share));
            arrow(to.shifted(0, -ARROW), to.shifted(0, -0.6), Pen.THIN);
        }
    }

    private void reaction(Reaction reaction) {
        Xy from = reaction.support().from();
        Xy to = reaction.support().to();
        pencil.line(Pen.CUT, spot(from), spot(to));
        Spot at = spot(from.toward(to, 0.5));
        double low = Math.max(spot(from).y(), spot(to).y());
        boolean onPost = from.x() != to.x() && from.y() != to.y();
        if (onPost) {
            low += POST;
            pencil.outline(Pen.OUTLINE, Fill.LIGHT, post(spot(from), spot(to), low));
        }
        Spot below = Spot.of(at.x(), Math.max(at.y(), low));
        arrow(below.shifted(0, 9), below.shifted(0, 1), Pen.PENCIL);
        pencil.text(below.shifted(0, 12.4), words(new Force(reaction.upN())), Lettering.DIMENSION, Align.CENTRE);
    }

    /** The top of it. */
    private static List<Spot> post(Spot from, Spot to, double low) {
        return List.of(from, to, Spot.of(to.x(), low), Spot.of(from.x(), low));
    }

    private String words(Force force) {
        return QuantityText.write(units.show(force), tape, Tape.Style.PRINTED);
    }

    /** A dot where it is, and its size below the wood. */
    private void peak() {
        Peak peak = found.tension();
        Spot at = spot(peak.where());
        Spot label = at.shifted(1.6 * LEADER, 0.7 * LEADER);
        pencil.dot(Fill.WHITE, at, 1.2);
        pencil.dot(Fill.BLACK, at, 0.8);
        pencil.line(Pen.THIN, at, label);
        pencil.text(
                label.shifted(1, 2),
                "stretched most: " + words(new Stress(peak.mpa().value())),
                Lettering.DIMENSION,
                Align.LEFT);
    }

    private String words(Stress stress) {
        return QuantityText.write(units.show(stress), tape, Tape.Style.PRINTED);
    }

    private void arrow(Spot from, Spot to, Pen pen) {
        pencil.line(pen, from, to);
        double back = to.directionTo(from);
        pencil.fill(Fill.BLACK, List.of(to, to.toward(back - 16, HEAD), to.toward(back + 16, HEAD)));
    }
}
