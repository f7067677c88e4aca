package pitchboard.parts;

import static pitchboard.parts.StepFigures.in;
import static pitchboard.source.Figure.derived;
import static pitchboard.source.Figure.given;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.site.Site;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.stair.Headroom;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The figures of the wood that carries the steps: its ends, its throat, the frame it makes. */
record WoodFigures(StepFigures steps, StringerLayout layout) {
    WoodFigures(Stair stair) {
        this(new StepFigures(stair), StringerLayout.of(stair));
    }

    private Stair stair() {
        return steps.stair();
    }

    private Site site() {
        return stair().site();
    }

    private Brief brief() {
        return stair().brief();
    }

    private StringerShape shape() {
        return layout.shape();
    }

    List<Figure> foot() {
        Length sole = brief().foot() instanceof FootDetail.SoleBoard board ? board.thickness() : Length.ZERO;
        return List.of(
                derived(
                        "s",
                        "seat: where the stringer stands, from the finished surface",
                        "sole board − f",
                        stair().seat(),
                        in("sole board", sole),
                        in("f", site().lowerFinish())),
                derived(
                        "c",
                        "FIRST CUT: seat to first level cut",
                        "r − t − s",
                        stair().firstCut(),
                        steps.rise(),
                        steps.thickness(),
                        in("s", stair().seat())),
                derived(
                        "",
                        "level cut at the foot, toe to heel",
                        "bottom edge at s",
                        shape().heel().x(),
                        in("s", stair().seat())));
    }

    List<Figure> stringer() {
        return List.of(
                given("d", "depth of the board", shape().boardDepth(), Practice.ASKED_FOR),
                derived(
                        "h",
                        "one step along the edge",
                        "√(r² + g²)",
                        layout.stepAlongEdge(),
                        steps.rise(),
                        steps.run()),
                derived(
                        "",
                        "depth cut out, square to the edge",
                        "r·g ÷ h",
                        shape().notchDepth(),
                        steps.rise(),
                        steps.run(),
                        in("h", layout.stepAlongEdge())),
                derived(
                        "",
                        "throat: wood left under a step",
                        "d − r·g ÷ h",
                        shape().throat(),
                        in("d", shape().boardDepth()),
                        in("r·g ÷ h", shape().notchDepth())),
                derived("e", "finished length along the board", "extent of the outline", layout.extent()),
                derived(
                        "",
                        "board needed",
                        "e + 2 × trim",
                        layout.boardNeeded(),
                        in("e", layout.extent()),
                        in("trim", brief().stringers().trim())));
    }

    List<Figure> head() {
        List<Figure> figures = new ArrayList<>(List.of(
                derived(
                        "",
                        "last level cut below the finished floor",
                        "H − (N·r − t)",
                        stair().flight().totalRise().minus(shape().headTop().y()),
                        in("H", stair().flight().totalRise()),
                        steps.treadCount(),
                        steps.rise(),
                        steps.thickness()),
                derived(
                        "",
                        "plumb cut at the head",
                        "d ÷ cos a − r",
                        shape().plumbCut(),
                        in("d", shape().boardDepth()),
                        steps.rise(),
                        steps.run()),
                derived(
                        "",
                        "plumb contact with the header",
                        "overlap of head and header",
                        shape().contactHeight(),
                        in("header", site().head().depth()),
                        in("decking", site().head().decking()))));
        stair().headroom().map(WoodFigures::headroom).ifPresent(figures::add);
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

    List<Figure> frame() {
        StringerSpacing spacing = StringerSpacing.of(brief());
        StoryPole pole = StoryPole.of(stair());
        return List.of(
                derived(
                        "",
                        "stringers, outside to outside",
                        "width − 2 × overhang",
                        spacing.overall(),
                        in("width", brief().width()),
                        in("overhang", brief().stringers().treadOverhang())),
                derived(
                        "",
                        "middle of a stringer to the middle of the next",
                        "(overall − thickness) ÷ (count − 1)",
                        spacing.spacing(),
                        in("overall", spacing.overall()),
                        in("thickness", brief().stringers().stock().thickness()),
                        in("count", new Count(brief().stringers().count()))),
                derived(
                        "",
                        "diagonal over the outer stringers, first to last corner",
                        "√(overall² + ((N − 1)·h)²)",
                        Squareness.diagonal(stair()),
                        in("overall", spacing.overall()),
                        steps.treadCount(),
                        in("h", layout.stepAlongEdge())),
                derived("", "spread of the rises as marked", "largest − smallest on the pole", pole.spread()));
    }
}
