package pitchboard.carry.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Answer;
import pitchboard.strength.Elastic;
import pitchboard.strength.LineLoad;
import pitchboard.strength.elements.EdgeLoad;
import pitchboard.strength.elements.Orthotropic;
import pitchboard.strength.elements.Plate;
import pitchboard.strength.elements.Support;
import pitchboard.strength.elements.mesh.Xy;
import pitchboard.strength.elements.throat.SawTooth;
import pitchboard.strength.elements.throat.SlopedBeam;

/**
 * One cut stringer as it stands: its exact outline, what really holds it, and an even load over the plan that the treads
 * hand down on the level cuts.
 *
 * <p>The level cut at the foot bears all over, may turn, and does not slide. At the head a ledger bears under its notch;
 * otherwise the plumb cut, or the part of it behind the hanger board, is held plumb. There the board may turn and slide
 * level, so that nothing but the foot holds it back. A post between them holds the lower edge plumb over its width, may
 * let it turn and slide, and the board runs on over it.
 */
final class CutBoard {
    /** A span along the slope of fewer throats is not looked at. */
    private static final double LEAST_THROATS = 2;

    private final Stair stair;
    private final StringerShape shape;
    private final Elastic wood;
    private final LineLoad load;
    private final Optional<PostFace> post;

    /** @param load along the plan */
    CutBoard(Stair stair, Elastic wood, LineLoad load) {
        this.stair = stair;
        this.shape = new StringerShape(stair);
        this.wood = wood;
        this.load = load;
        this.post = PostFace.under(stair);
    }

    static Xy xy(Point point) {
        return new Xy(point.x().approxMm(), point.y().approxMm());
    }

    private double thicknessMm() {
        return stair.brief().stringers().stock().thickness().approxMm();
    }

    Plate plate() {
        List<Xy> outline = shape.outline().corners().stream().map(CutBoard::xy).toList();
        Orthotropic stiff = new Orthotropic(
                wood.along().nPerMm2(), wood.across().nPerMm2(), wood.shear().nPerMm2(), wood.poisson());
        Xy grain = new Xy(stair.run().approxMm(), stair.rise().approxMm());
        return new Plate(outline, thicknessMm(), stiff, grain, supports(), loads());
    }

    /** Foot and head, and the post where there is one. */
    private List<Support> supports() {
        List<Support> supports = new ArrayList<>(List.of(foot(), head()));
        post.map(PostFace::support).ifPresent(supports::add);
        return supports;
    }

    private Support foot() {
        Length from = stair.brief().foot() instanceof FootDetail.Kicker kicker ? kicker.depth() : Length.ZERO;
        return Support.pin(xy(shape.toe().shifted(from, Length.ZERO)), xy(shape.heel()));
    }

    private Support head() {
        Point top = shape.headTop();
        HeadFixing fixing = stair.brief().headFixing();
        if (fixing instanceof HeadFixing.Ledger ledger) {
            Point face = shape.headBottom().shifted(Length.ZERO, ledger.height());
            return Support.roller(xy(face.shifted(ledger.thickness().negated(), Length.ZERO)), xy(face));
        }
        if (fixing instanceof HeadFixing.HangerBoard board) {
            Point back = top.shifted(board.thickness().negated(), Length.ZERO);
            Point end = shape.takesWholeCut(board)
                    ? shape.headEnd()
                    : back.shifted(Length.ZERO, board.height().negated());
            return Support.roller(xy(back), xy(end));
        }
        return Support.roller(xy(top), xy(shape.headBottom()));
    }

    /** One run of the load on every level cut, even on the last, which what is let into the head may shorten. */
    private List<EdgeLoad> loads() {
        double each = load.nPerMm() * stair.run().approxMm();
        List<EdgeLoad> loads = new ArrayList<>();
        for (int step = 1; step <= stair.treads(); step++) {
            Point from = Point.of(stair.riserCut(step), stair.levelCut(step));
            Point to = Point.of(step < stair.treads() ? stair.riserCut(step + 1) : lastEnd(), stair.levelCut(step));
            loads.add(EdgeLoad.down(xy(from), xy(to), each));
        }
        return loads;
    }

    private Length lastEnd() {
        return stair.brief().headFixing() instanceof HeadFixing.HangerBoard board
                ? stair.headerFace().minus(board.thickness())
                : stair.headerFace();
    }

    /** The throat as a plain beam under the same loads on the same supports; or that the board is none. */
    Answer<SlopedBeam> throat() {
        if (!post.map(PostFace::bearsWhole).orElse(true)) {
            return Answer.unknown("the lower edge of the stringers does not lie on the whole width of the posts");
        }
        return longestMm() < LEAST_THROATS * shape.throat().approxMm()
                ? Answer.unknown("so short a board is no beam, and is not compared with one")
                : Answer.known(beam());
    }

    /** The longest way along the slope from one support to the next. */
    double longestMm() {
        double foot = middle(foot());
        double head = middle(head());
        double between = post.map(face -> middle(face.support())).orElse(foot);
        return Math.max(between - foot, head - between) / cos();
    }

    private double cos() {
        double run = stair.run().approxMm();
        return run / Xy.length(run, stair.rise().approxMm());
    }

    private SlopedBeam beam() {
        double foot = middle(foot());
        List<SlopedBeam.Patch> patches = loads().stream()
                .map(each ->
                        new SlopedBeam.Patch(each.from().x() - foot, each.to().x() - foot, -each.totalY()))
                .toList();
        SlopedBeam whole = new SlopedBeam(
                middle(head()) - foot,
                cos(),
                shape.throat().approxMm(),
                thicknessMm(),
                wood.along().nPerMm2(),
                wood.shear().nPerMm2(),
                patches);
        return post.map(face -> whole.over(middle(face.support()) - foot)).orElse(whole);
    }

    private static double middle(Support support) {
        return (support.from().x() + support.to().x()) / 2;
    }

    SawTooth teeth() {
        return new SawTooth(
                stair.run().approxMm(),
                stair.rise().approxMm(),
                shape.boardDepth().approxMm(),
                stair.treads());
    }
}
