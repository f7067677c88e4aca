package pitchboard.parts;

import static pitchboard.source.Figure.derived;
import static pitchboard.source.Figure.given;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.site.Rise;
import pitchboard.site.Site;
import pitchboard.source.Figure;
import pitchboard.source.Figure.Input;
import pitchboard.source.Practice;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;

/** The figures of the steps: what they climb, how many there are, what lies on them. */
record StepFigures(Stair stair) {
    private Site site() {
        return stair.site();
    }

    List<Figure> totalRise() {
        Flight flight = stair.flight();
        Length landing = stair.landing();
        Length read = site().rise().at(landing);
        List<Figure> figures = new ArrayList<>();
        if (site().rise() instanceof Rise.FromLevelLine) {
            figures.add(derived("L", "landing point, level from the header", "N·g + b", landing, treadCount(), run()));
            figures.add(derived("m", "drop read at the landing point", "level line at L", read, in("L", landing)));
        } else {
            figures.add(given("m", "rise as measured", read, Practice.MEASURED));
        }
        figures.add(given("u", "finish still to come above", site().upperFinish(), Practice.MEASURED));
        figures.add(given("f", "finish still to come below", site().lowerFinish(), Practice.MEASURED));
        figures.add(derived(
                "H",
                "total rise between finished surfaces",
                "m + u − f",
                flight.totalRise(),
                in("m", read),
                in("u", site().upperFinish()),
                in("f", site().lowerFinish())));
        return figures;
    }

    List<Figure> steps() {
        Flight flight = stair.flight();
        Input risers = in("n", new Count(flight.risers()));
        return List.of(
                given(
                        "n",
                        "number of risers",
                        risers.value(),
                        wished(stair.brief().wishes().risers().isPresent())),
                derived("r", "rise of every step", "H ÷ n", stair.rise(), in("H", flight.totalRise()), risers),
                derived("N", "number of treads", treadsExpression(), new Count(stair.treads()), risers),
                given(
                        "g",
                        "run of every step, nosing to nosing",
                        stair.run(),
                        wished(stair.brief().wishes().run().isPresent())),
                derived("G", "total run, first riser cut to header", "N × g", flight.totalRun(), treadCount(), run()),
                derived(
                        "",
                        "level space taken, header to first nosing",
                        "(N − 1)·g + W + b",
                        stair.spaceTaken(),
                        treadCount(),
                        run(),
                        in("W", stair.brief().treads().width()),
                        in("b", stair.riserThickness())),
                derived("a", "pitch", "angle of r over g", stair.pitch(), rise(), run()),
                derived("2r + g", "pace", "2·r + g", stair.rise().times(2).plus(stair.run()), rise(), run()));
    }

    private static Practice wished(boolean fixed) {
        return fixed ? Practice.ASKED_FOR : Practice.CHOSEN;
    }

    private String treadsExpression() {
        return stair.treads() == stair.flight().risers() ? "n (top tread flush)" : "n − 1 (floor is the last step)";
    }

    List<Figure> treads() {
        TreadMakeUp treads = stair.brief().treads();
        return List.of(
                given("t", "thickness of a tread", treads.thickness(), Practice.ASKED_FOR),
                given("b", "thickness of a riser board", stair.riserThickness(), Practice.ASKED_FOR),
                derived(
                        "W",
                        "width of a whole tread",
                        "k·w + (k − 1)·q",
                        treads.width(),
                        in("k", new Count(treads.boards())),
                        in("w", treads.boardWidth()),
                        in("q", treads.gap())),
                derived("p", "nosing projection", "W − g", stair.projection(), in("W", treads.width()), run()),
                derived(
                        "",
                        "between tread top and next tread's underside",
                        "r − t",
                        stair.openingBetweenTreads(),
                        rise(),
                        thickness()));
    }

    Input rise() {
        return in("r", stair.rise());
    }

    Input run() {
        return in("g", stair.run());
    }

    Input thickness() {
        return in("t", stair.treadThickness());
    }

    Input treadCount() {
        return in("N", new Count(stair.treads()));
    }

    static Input in(String symbol, Quantity value) {
        return new Input(symbol, value);
    }
}
