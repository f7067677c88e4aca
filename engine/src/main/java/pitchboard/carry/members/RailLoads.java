package pitchboard.carry.members;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.rules.Rulebook;
import pitchboard.source.Confidence;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.strength.Force;
import pitchboard.strength.LineLoad;
import pitchboard.strength.Units;
import pitchboard.strength.eurocode.Eurocode;

/**
 * What rails and guards must bear, as held against strength: the rulebook's, or those of the standard.
 *
 * @param point in any direction, at any place of the top
 * @param along level, all along the top, not together with the other; nothing where nobody asks for it
 * @param infill level, on one square foot (0.3 by 0.3 m); empty where nobody asks for it
 */
public record RailLoads(
        Loads.Sourced<Force> point, Optional<Loads.Sourced<LineLoad>> along, Optional<Loads.Sourced<Force>> infill) {
    private static final Practice TOP = new Practice("IRC Table R301.5 note d, IBC 1607.9", Confidence.READ);
    private static final Practice INFILL = new Practice("IRC Table R301.5 note f", Confidence.READ);
    private static final Source LINE = Eurocode.LOADS.memory("Table 6.12, category A");

    public static RailLoads of(Basis basis, Rulebook book) {
        BookLoads said = new BookLoads(book);
        double raised = basis.loads().safety().live();
        Optional<Loads.Sourced<Force>> point = said.findRail().map(named -> force(named, raised));
        Optional<Loads.Sourced<LineLoad>> along = said.findAlongRail().map(named -> line(named, raised));
        Optional<Loads.Sourced<Force>> infill = said.findInfill().map(named -> force(named, raised));
        if (basis.isEurocode()) {
            Loads.Sourced<LineLoad> usual = new Loads.Sourced<>(new LineLoad(0.5 * raised), LINE);
            return new RailLoads(
                    point.orElseGet(() -> new Loads.Sourced<>(Force.NONE, LINE)),
                    along.or(() -> point.isPresent() ? Optional.empty() : Optional.of(usual)),
                    infill);
        }
        return new RailLoads(
                point.orElseGet(() -> new Loads.Sourced<>(Force.pounds(200), TOP)),
                along,
                infill.or(() -> Optional.of(new Loads.Sourced<>(Force.pounds(50), INFILL))));
    }

    private static Loads.Sourced<Force> force(BookLoads.Named named, double raised) {
        return new Loads.Sourced<>(Loads.force(named.load()).times(raised), named.source());
    }

    private static Loads.Sourced<LineLoad> line(BookLoads.Named named, double raised) {
        Reckoned load = named.load();
        LineLoad line =
                load.unit() == Unit.POUND_PER_FOOT ? LineLoad.poundsPerFoot(load.value()) : new LineLoad(load.value());
        return new Loads.Sourced<>(line.times(raised), named.source());
    }

    /** What one post takes that stands so far from its neighbours. */
    public Force onPost(Length spacing) {
        double line = along.map(load -> load.load().over(spacing).newtons()).orElse(0.0);
        return new Force(Math.max(line, point.load().newtons()));
    }

    public List<Figure> figures(Units units) {
        List<Figure> figures = new ArrayList<>();
        figures.add(Figure.given("Pr", "at one place of a rail, any way", units.show(point.load()), point.source()));
        along.ifPresent(load -> figures.add(
                Figure.given("qr", "along the top of a rail or guard", units.show(load.load()), load.source())));
        infill.ifPresent(load -> figures.add(Figure.given(
                "Pi", "level, on one square foot of a guard's infill", units.show(load.load()), load.source())));
        return figures;
    }
}
