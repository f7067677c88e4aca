package pitchboard.stair;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.FootDetail;
import pitchboard.measure.Length;

/** What stands against the cuts at the foot of a stringer that has wood left under its steps. */
record FootCut(StringerShape shape) {
    List<Objection> objections() {
        return Stream.of(firstCut(), reachesSeat(), kickerFits())
                .flatMap(Optional::stream)
                .toList();
    }

    /** Tread, seat and kicker must leave wood of the first rise. */
    private Optional<Objection> firstCut() {
        Stair stair = shape.stair();
        Length taken = stair.treadThickness().plus(stair.seat()).plus(kickerHeight());
        if (taken.isLessThan(stair.rise())) {
            return Optional.empty();
        }
        return Buildable.against(
                "first-cut",
                "tread and boards at the foot, together",
                taken,
                stair.rise(),
                "use thinner treads, a thinner board at the foot, or fewer risers");
    }

    private Length kickerHeight() {
        return shape.stair().brief().foot() instanceof FootDetail.Kicker kicker ? kicker.height() : Length.ZERO;
    }

    /** With a thick finish still to come the first cut can be higher than the board is deep. */
    private Optional<Objection> reachesSeat() {
        Length firstCut = shape.stair().firstCut();
        // Plumb a board is deeper than square, so most need no square root to pass.
        if (firstCut.isAtMost(shape.boardDepth()) || firstCut.isLessThan(shape.plumbDepth())) {
            return Optional.empty();
        }
        return Buildable.against(
                "foot-reaches",
                "plumb depth of the stringer's board",
                shape.plumbDepth(),
                firstCut,
                "lift the foot on a thicker sole board, or use deeper stock for the stringers");
    }

    private Optional<Objection> kickerFits() {
        if (!(shape.stair().brief().foot() instanceof FootDetail.Kicker kicker)) {
            return Optional.empty();
        }
        Length levelCut = shape.heel().x();
        if (levelCut.isMoreThan(kicker.depth())) {
            return Optional.empty();
        }
        return Buildable.against(
                "kicker-fits",
                "length of the level cut at the foot",
                levelCut,
                kicker.depth(),
                "use a narrower kicker, or deeper stock for the stringers");
    }
}
