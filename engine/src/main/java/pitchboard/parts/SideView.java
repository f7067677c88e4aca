package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Risers;
import pitchboard.brief.Support;
import pitchboard.brief.TreadMakeUp;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** Every piece of the stair as it is seen from the side, in the site frame. */
public record SideView(Stair stair) {
    public Outline stringer() {
        return new StringerShape(stair).outline();
    }

    /** The boards of one tread, front board first. */
    public List<Outline> treadBoards(int step) {
        TreadMakeUp treads = stair.brief().treads();
        Point nosing = stair.nosing(step);
        List<Outline> boards = new ArrayList<>();
        for (int board = 0; board < treads.boards(); board++) {
            Length front =
                    nosing.x().plus(treads.boardWidth().plus(treads.gap()).times(board));
            boards.add(rectangle(
                    front, nosing.y().minus(treads.thickness()), front.plus(treads.boardWidth()), nosing.y()));
        }
        return boards;
    }

    /** The board in front of one riser cut, from level cut to level cut; empty when the steps are open. */
    public Optional<Outline> riserBoard(int step) {
        if (!(stair.brief().risers() instanceof Risers.Boards boards)) {
            return Optional.empty();
        }
        Length bottom = step == 1 ? stair.site().lowerFinish().negated() : stair.levelCut(step - 1);
        Length top = isFloor(step) ? deckingUnderside() : stair.levelCut(step);
        if (top.isAtMost(bottom)) {
            return Optional.empty();
        }
        Length face = stair.riserCut(step);
        return Optional.of(rectangle(face.minus(boards.thickness()), bottom, face, top));
    }

    private boolean isFloor(int step) {
        return stair.brief().headJoin() == HeadJoin.ONE_DOWN
                && step == stair.flight().risers();
    }

    private Length deckingUnderside() {
        return stair.flight().totalRise().minus(stair.site().head().decking());
    }

    /** The hanger board or ledger at the head; empty when there is none. */
    public Optional<Outline> headBoard() {
        StringerShape shape = new StringerShape(stair);
        Length face = stair.headerFace();
        HeadFixing fixing = stair.brief().headFixing();
        if (fixing instanceof HeadFixing.HangerBoard board) {
            Length top = shape.headTop().y();
            return Optional.of(rectangle(face.minus(board.thickness()), top.minus(board.height()), face, top));
        }
        if (fixing instanceof HeadFixing.Ledger ledger) {
            Length bottom = shape.headBottom().y();
            return Optional.of(rectangle(face.minus(ledger.thickness()), bottom, face, bottom.plus(ledger.height())));
        }
        return Optional.empty();
    }

    /** The sole or kicker board; empty when there is none. A sole reaches from the toe backward. */
    public Optional<Outline> footBoard() {
        Length seat = stair.seat();
        FootDetail foot = stair.brief().foot();
        if (foot instanceof FootDetail.SoleBoard sole) {
            return Optional.of(rectangle(Length.ZERO, seat.minus(sole.thickness()), sole.width(), seat));
        }
        if (foot instanceof FootDetail.Kicker kicker) {
            return Optional.of(rectangle(Length.ZERO, seat, kicker.depth(), seat.plus(kicker.height())));
        }
        return Optional.empty();
    }

    /** One post of the support, its top cut to the slope; empty when there is none. */
    public Optional<Outline> supportPost() {
        return stair.brief()
                .support()
                .filter(post -> SupportPost.height(stair, post).isPositive())
                .map(this::supportPost);
    }

    private Outline supportPost(Support post) {
        Length front = SupportPost.front(post);
        Length back = front.plus(post.width());
        Length bottom = SupportPost.bottom(stair, post);
        return new Outline(List.of(
                Point.of(front, bottom),
                Point.of(front, SupportPost.lowTop(stair, post)),
                Point.of(back, SupportPost.highTop(stair, post)),
                Point.of(back, bottom)));
    }

    /** The header that holds the head, drawn this thick. */
    public Outline header(Length thickness) {
        Length top = deckingUnderside();
        Length face = stair.headerFace();
        return rectangle(face, top.minus(stair.site().head().depth()), face.plus(thickness), top);
    }

    /** The upper floor, from its edge at the header this far back. */
    public Outline decking(Length back) {
        Length edge =
                stair.headerFace().minus(stair.site().head().deckingOverhang().orElse(Length.ZERO));
        return rectangle(
                edge,
                deckingUnderside(),
                stair.headerFace().plus(back),
                stair.flight().totalRise());
    }

    /** A rectangle from its lower left to its upper right corner, clockwise. */
    public static Outline rectangle(Length left, Length bottom, Length right, Length top) {
        return new Outline(
                List.of(Point.of(left, bottom), Point.of(left, top), Point.of(right, top), Point.of(right, bottom)));
    }
}
