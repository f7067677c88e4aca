package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.site.Rise;
import pitchboard.site.Site;
import pitchboard.source.Figure;
import pitchboard.source.Figure.Input;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.stair.Flight;
import pitchboard.stair.Headroom;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** Every figure of a stair with its working, in the order a crew would work it out by hand. */
public final class Worksheet {
    /** Figures that belong together. */
    public record Section(String title, List<Figure> figures) {
        public Section {
            figures = List.copyOf(figures);
        }
    }

    private final Stair stair;
    private final Site site;
    private final Brief brief;
    private final StringerShape shape;
    private final StringerLayout layout;

    private Worksheet(Stair stair) {
        this.stair = stair;
        this.site = stair.site();
        this.brief = stair.brief();
        this.layout = StringerLayout.of(stair);
        this.shape = layout.shape();
    }

    public static List<Section> of(Stair stair) {
        Worksheet sheet = new Worksheet(stair);
        return List.of(
                new Section("Total rise", sheet.totalRise()),
                new Section("Steps", sheet.steps()),
                new Section("Treads and nosing", sheet.treads()),
                new Section("Foot", sheet.foot()),
                new Section("Stringer", sheet.stringer()),
                new Section("Head", sheet.head()),
                new Section("Frame and checks", sheet.frame()));
    }

    private List<Figure> totalRise() {
        Flight flight = stair.flight();
        Length landing = stair.landing();
        Length read = site.rise().at(landing);
        List<Figure> figures = new ArrayList<>();
        if (site.rise() instanceof Rise.FromLevelLine) {
            figures.add(derived("L", "landing point, level from the header", "N·g + b", landing, treadCount(), run()));
            figures.add(derived("m", "drop read at the landing point", "level line at L", read, in("L", landing)));
        } else {
            figures.add(given("m", "rise as measured", read, Practice.MEASURED));
        }
        figures.add(given("u", "finish still to come above", site.upperFinish(), Practice.MEASURED));
        figures.add(given("f", "finish still to come below", site.lowerFinish(), Practice.MEASURED));
        figures.add(derived(
                "H",
                "total rise between finished surfaces",
                "m + u − f",
                flight.totalRise(),
                in("m", read),
                in("u", site.upperFinish()),
                in("f", site.lowerFinish())));
        return figures;
    }

    private List<Figure> steps() {
        Flight flight = stair.flight();
        Input risers = in("n", new Count(flight.risers()));
        return List.of(
                given("n", "number of risers", risers.value(), Practice.ASKED_FOR),
                derived("r", "rise of every step", "H ÷ n", stair.rise(), in("H", flight.totalRise()), risers),
                derived("N", "number of treads", treadsExpression(), new Count(stair.treads()), risers),
                given("g", "run of every step, nosing to nosing", stair.run(), Practice.ASKED_FOR),
                derived("G", "total run, first riser cut to header", "N × g", flight.totalRun(), treadCount(), run()),
                derived(
                        "",
                        "level space taken, header to first nosing",
                        "(N − 1)·g + W + b",
                        stair.spaceTaken(),
                        treadCount(),
                        run(),
                        in("W", brief.treads().width()),
                        in("b", stair.riserThickness())),
                derived("α", "pitch", "angle of r over g", stair.pitch(), rise(), run()),
                derived("2r + g", "pace", "2·r + g", stair.rise().times(2).plus(stair.run()), rise(), run()));
    }

    private String treadsExpression() {
        return stair.treads() == stair.flight().risers() ? "n (top tread flush)" : "n − 1 (floor is the last step)";
    }

    private List<Figure> treads() {
        TreadMakeUp treads = brief.treads();
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

    private List<Figure> foot() {
        Length sole = brief.foot() instanceof FootDetail.SoleBoard board ? board.thickness() : Length.ZERO;
        return List.of(
                derived(
                        "s",
                        "seat: where the stringer stands, from the finished surface",
                        "sole board − f",
                        stair.seat(),
                        in("sole board", sole),
                        in("f", site.lowerFinish())),
                derived(
                        "c",
                        "FIRST CUT: seat to first level cut",
                        "r − t − s",
                        stair.firstCut(),
                        rise(),
                        thickness(),
                        in("s", stair.seat())),
                derived(
                        "",
                        "level cut at the foot, toe to heel",
                        "bottom edge at s",
                        shape.heel().x(),
                        in("s", stair.seat())));
    }

    private List<Figure> stringer() {
        return List.of(
                given("d", "depth of the board", shape.boardDepth(), Practice.ASKED_FOR),
                derived("h", "one step along the edge", "√(r² + g²)", layout.stepAlongEdge(), rise(), run()),
                derived(
                        "",
                        "depth cut out, square to the edge",
                        "r·g ÷ h",
                        shape.notchDepth(),
                        rise(),
                        run(),
                        in("h", layout.stepAlongEdge())),
                derived(
                        "",
                        "throat: wood left under a step",
                        "d − r·g ÷ h",
                        shape.throat(),
                        in("d", shape.boardDepth()),
                        in("r·g ÷ h", shape.notchDepth())),
                derived("e", "finished length along the board", "extent of the outline", layout.extent()),
                derived(
                        "",
                        "board needed",
                        "e + 2 × trim",
                        layout.boardNeeded(),
                        in("e", layout.extent()),
                        in("trim", brief.stringers().trim())));
    }

    private List<Figure> head() {
        List<Figure> figures = new ArrayList<>(List.of(
                derived(
                        "",
                        "last level cut below the finished floor",
                        "H − (N·r − t)",
                        stair.flight().totalRise().minus(shape.headTop().y()),
                        in("H", stair.flight().totalRise()),
                        treadCount(),
                        rise(),
                        thickness()),
                derived(
                        "",
                        "plumb cut at the head",
                        "d ÷ cos α − r",
                        shape.plumbCut(),
                        in("d", shape.boardDepth()),
                        rise(),
                        run()),
                derived(
                        "",
                        "plumb contact with the header",
                        "overlap of head and header",
                        shape.contactHeight(),
                        in("header", site.head().depth()),
                        in("decking", site.head().decking()))));
        stair.headroom().map(Worksheet::headroom).ifPresent(figures::add);
        return figures;
    }

    private static Figure headroom(Headroom headroom) {
        return derived(
                "",
                "headroom, tightest place",
                "underside − walking line",
                headroom.clear(),
                in("underside", headroom.at().y().plus(headroom.clear())),
                in("walking line", headroom.at().y()));
    }

    private List<Figure> frame() {
        StringerSpacing spacing = StringerSpacing.of(brief);
        StoryPole pole = StoryPole.of(stair);
        return List.of(
                derived(
                        "",
                        "stringers, outside to outside",
                        "width − 2 × overhang",
                        spacing.overall(),
                        in("width", brief.width()),
                        in("overhang", brief.stringers().treadOverhang())),
                derived(
                        "",
                        "middle of a stringer to the middle of the next",
                        "(overall − thickness) ÷ (count − 1)",
                        spacing.spacing(),
                        in("overall", spacing.overall()),
                        in("thickness", brief.stringers().stock().thickness()),
                        in("count", new Count(brief.stringers().count()))),
                derived(
                        "",
                        "diagonal over the outer stringers, first to last corner",
                        "√(overall² + ((N − 1)·h)²)",
                        Squareness.diagonal(stair),
                        in("overall", spacing.overall()),
                        treadCount(),
                        in("h", layout.stepAlongEdge())),
                derived("", "spread of the rises as marked", "largest − smallest on the pole", pole.spread()));
    }

    private static Figure given(String symbol, String meaning, Quantity value, Source source) {
        return Figure.given(symbol, meaning, value, source);
    }

    private static Figure derived(String symbol, String meaning, String expression, Quantity value, Input... inputs) {
        return Figure.derived(symbol, meaning, expression, value, inputs);
    }

    private static Input in(String symbol, Quantity value) {
        return new Input(symbol, value);
    }

    private Input rise() {
        return in("r", stair.rise());
    }

    private Input run() {
        return in("g", stair.run());
    }

    private Input thickness() {
        return in("t", stair.treadThickness());
    }

    private Input treadCount() {
        return in("N", new Count(stair.treads()));
    }
}
