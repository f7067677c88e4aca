package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.Risers;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Support;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.railing.GuardLayout;
import pitchboard.stair.Stair;

/** Lists the pieces of a stair, foot to head. */
public final class PartMaker {
    private static final Length PITCH_BOARD_THICKNESS = Length.inches(0, 3, 8);

    private final Stair stair;
    private final Brief brief;
    private final List<Part> parts = new ArrayList<>();

    private PartMaker(Stair stair) {
        this.stair = stair;
        this.brief = stair.brief();
    }

    public static List<Part> partsOf(Stair stair) {
        PartMaker maker = new PartMaker(stair);
        maker.stringers();
        maker.pitchBoard();
        maker.treads();
        maker.risers();
        maker.head();
        maker.foot();
        maker.support();
        GuardLayout.find(stair).ifPresent(guard -> maker.parts.addAll(new RailParts(guard).parts()));
        maker.parts.addAll(EdgeParts.partsOf(stair));
        HandrailParts.find(stair).ifPresent(maker.parts::add);
        return List.copyOf(maker.parts);
    }

    private void add(PartId id, String name, String purpose, int count, Length thickness, Length width, Length length) {
        parts.add(new Part(id, name, purpose, count, thickness, width, length));
    }

    private void stringers() {
        StringerStock stock = brief.stringers().stock();
        add(
                PartId.STRINGER,
                "stringer",
                "carries the treads; cut the first, try it, then use it as the pattern",
                brief.stringers().count(),
                stock.thickness(),
                stock.depth(),
                StringerLayout.of(stair).boardNeeded());
    }

    /** Thickness of the template as Hodgson, Stair-Building, gives it: 3/8 in hardwood. */
    private void pitchBoard() {
        add(
                PartId.PITCH_BOARD,
                "pitch board",
                "sets out every step; one rise by one run",
                1,
                PITCH_BOARD_THICKNESS,
                stair.rise(),
                stair.run());
    }

    private void treads() {
        TreadMakeUp treads = brief.treads();
        add(
                PartId.TREAD,
                treads.boards() == 1 ? "tread" : "tread board",
                treads.boards() == 1 ? "one for each step" : treads.boards() + " side by side for each step",
                stair.treads() * treads.boards(),
                treads.thickness(),
                treads.boardWidth(),
                brief.width());
    }

    private void risers() {
        if (brief.risers() instanceof Risers.Boards boards) {
            parts.addAll(new RiserBoards(stair, boards).parts());
        }
    }

    private void head() {
        if (brief.headFixing() instanceof HeadFixing.HangerBoard board) {
            add(
                    PartId.HEAD_BOARD,
                    "hanger board",
                    "fixed flat to the header, let into the back of every stringer's head",
                    1,
                    board.thickness(),
                    board.height(),
                    StringerSpacing.of(brief).overall());
        }
        if (brief.headFixing() instanceof HeadFixing.Ledger ledger) {
            add(
                    PartId.HEAD_BOARD,
                    "ledger",
                    "fixed to the header, under the notch of every stringer's head",
                    1,
                    ledger.thickness(),
                    ledger.height(),
                    StringerSpacing.of(brief).overall());
        }
    }

    private void support() {
        Optional<Support> support =
                brief.support().filter(post -> SupportPost.height(stair, post).isPositive());
        support.ifPresent(post -> add(
                PartId.SUPPORT,
                "support post",
                "stands under a stringer on a footing of its own, its top cut to the slope",
                brief.stringers().count(),
                post.thickness(),
                post.width(),
                SupportPost.height(stair, post).roundedUp(brief.tape().graduation())));
    }

    private void foot() {
        if (brief.foot() instanceof FootDetail.SoleBoard sole) {
            add(
                    PartId.FOOT_BOARD,
                    "sole board",
                    "lies on the surface; the stringers stand on it",
                    1,
                    sole.thickness(),
                    sole.width(),
                    StringerSpacing.of(brief).overall());
        }
        if (brief.foot() instanceof FootDetail.Kicker kicker) {
            add(
                    PartId.FOOT_BOARD,
                    "kicker board",
                    "fixed flat to the surface, let into the toe of every stringer so that it cannot slide",
                    1,
                    kicker.height(),
                    kicker.depth(),
                    StringerSpacing.of(brief).overall());
        }
    }
}
