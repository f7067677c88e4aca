package pitchboard.stair;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.brief.HeadFixing;
import pitchboard.measure.Length;

/** What stands against the cuts at the head of a stringer that has wood left under its steps. */
record HeadCut(StringerShape shape) {
    List<Objection> objections() {
        return Stream.of(
                        reachesUpToTheHeader(),
                        reachesDownToTheHeader(),
                        notchLeavesTheLastStep(),
                        ledgerFits(),
                        hangerBoardClearsTheGround())
                .flatMap(Optional::stream)
                .toList();
    }

    private Stair stair() {
        return shape.stair();
    }

    private HeadFixing fixing() {
        return stair().brief().headFixing();
    }

    private Optional<Objection> reachesUpToTheHeader() {
        if (shape.bearingTop().isMoreThan(shape.headerBottom())) {
            return Optional.empty();
        }
        return Buildable.against(
                "head-meets-header",
                "from the finished floor down to what carries the head",
                belowFloor(shape.bearingTop()),
                belowFloor(shape.headerBottom()),
                "add a drop header under it, or bring the top tread flush with the floor");
    }

    private Optional<Objection> reachesDownToTheHeader() {
        Length headerTop = shape.headerTop();
        if (shape.bearingTop().isAtMost(headerTop) || shape.bearingBottom().isLessThan(headerTop)) {
            return Optional.empty();
        }
        return Buildable.against(
                "head-above-header",
                "from the finished floor down to the underside of what carries the head",
                belowFloor(shape.bearingBottom()),
                belowFloor(headerTop),
                "use a higher board at the head, or another fixing there");
    }

    private Length belowFloor(Length height) {
        return stair().flight().totalRise().minus(height);
    }

    /** A notch as deep as the last step is long would cut the step before it, too. */
    private Optional<Objection> notchLeavesTheLastStep() {
        Length notch = shape.headNotchDepth();
        if (notch.isLessThan(stair().run())) {
            return Optional.empty();
        }
        return Buildable.against(
                "head-notch",
                "thickness of the board let into the head",
                notch,
                stair().run(),
                "use a thinner board at the head, or another fixing there");
    }

    private Optional<Objection> ledgerFits() {
        if (!(fixing() instanceof HeadFixing.Ledger ledger) || ledger.height().isLessThan(shape.plumbCut())) {
            return Optional.empty();
        }
        return Buildable.against(
                "ledger-fits",
                "height of the ledger",
                ledger.height(),
                shape.plumbCut(),
                "use a lower ledger, or another fixing at the head");
    }

    private Optional<Objection> hangerBoardClearsTheGround() {
        if (!(fixing() instanceof HeadFixing.HangerBoard board)) {
            return Optional.empty();
        }
        Length room = shape.headTop().y().plus(stair().site().lowerFinish());
        if (board.height().isAtMost(room)) {
            return Optional.empty();
        }
        return Buildable.against(
                "hanger-fits",
                "height of the hanger board",
                board.height(),
                room,
                "use a lower hanger board, or another fixing at the head");
    }
}
