package pitchboard.carry;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Fasteners;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.Joints;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.carry.fixings.Joint;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.JointWoods;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerReactions;
import pitchboard.measure.Length;
import pitchboard.rules.Place;
import pitchboard.source.Confidence;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Force;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.fasteners.Pulled;

/** What holds the heads of the stringers to the header. */
final class HeadFindings {
    static final String PEOPLE = "people over the whole flight, and its own weight";

    /** A member is tied along its length for a part of what it bears: so small that friction would do, never trusted. */
    static final double TIED_FOR = 0.05;

    static final Practice TIE = new Practice("ASCE 7-16, 1.4.4", Confidence.FROM_MEMORY);

    static final Practice STATED = new Practice("as its maker states", Confidence.DERIVED);

    /** A screw from behind finds at least so much of the stringer. */
    private static final Length DEEP = Length.inches(8);

    private final Stair stair;
    private final Basis basis;
    private final StringerReactions reactions;
    private final Fixed fixed;

    HeadFindings(Stair stair, Basis basis, StringerCase it) {
        this.stair = stair;
        this.basis = basis;
        this.reactions = new StringerReactions(basis, it);
        this.fixed = new Fixed(MemberFinding.Topic.JOINTS, basis, Place.HEAD);
    }

    private Joints said() {
        return stair.brief().joints();
    }

    List<MemberFinding> findings() {
        HeadFixing fixing = stair.brief().headFixing();
        if (fixing instanceof HeadFixing.HangerBoard board) {
            return List.of(
                    board("hanger board", board.thickness(), board.height()),
                    intoBoard(board.thickness(), board.height()));
        }
        if (fixing instanceof HeadFixing.Ledger ledger) {
            return List.of(board("ledger", ledger.thickness(), ledger.height()));
        }
        return List.of(fixing instanceof HeadFixing.MetalHanger ? hanger() : throughHeader());
    }

    private Asked down() {
        Force force = reactions.head();
        Figure figure = MemberChecks.figure(
                "R", "load on one head", "w·L ÷ 2", basis.units().show(force));
        return Asked.across(PEOPLE, figure, force);
    }

    /** With the pull away from the header that every member is tied for. */
    private Asked downAndAway() {
        Asked down = down();
        return new Asked(PEOPLE, down.figure(), down.across(), down.across().times(TIED_FOR));
    }

    private Length headerThickness() {
        return said().header().orElse(basis.isEurocode() ? Length.mm(38) : Length.inches(1, 1, 2));
    }

    private boolean headerAssumed() {
        return basis.said().header().isEmpty();
    }

    private MemberFinding board(String what, Length thickness, Length height) {
        Length room = Length.min(height, new StringerShape(stair).contactHeight());
        return fixed.across(new Fixed.Case(
                new Judging.Name(
                        "head-board",
                        what + " on the header",
                        "the fasteners of the " + what + " carry {} of what they may"),
                said().headBoard(),
                woods -> new Joint(
                        woods.header(),
                        headerThickness(),
                        Pulled.Grain.SIDE,
                        woods.header(),
                        thickness,
                        Optional.of(room),
                        woods.wetness()),
                downAndAway(),
                "nobody said what holds the " + what + " to the header: at each stringer it must hold {}",
                headerAssumed()));
    }

    private MemberFinding intoBoard(Length thickness, Length height) {
        return fixed.across(new Fixed.Case(
                new Judging.Name(
                        "head",
                        "stringers on the hanger board",
                        "the fasteners from the hanger board into the end of a stringer carry {} of what they may"),
                said().head(),
                woods -> intoEnd(woods, thickness, Optional.of(height)),
                down(),
                "nobody said what holds each stringer to the hanger board: it must hold {} down, in end grain; a strap or"
                        + " a metal hanger is better, for end grain holds no pull",
                headerAssumed() || basis.woods().stringersAreAssumed()));
    }

    private static Joint intoEnd(JointWoods woods, Length through, Optional<Length> room) {
        return new Joint(woods.stringers(), DEEP, Pulled.Grain.END, woods.header(), through, room, woods.wetness());
    }

    /** Bolts through the stringer and a block beside it; screws through the header into the stringer's end. */
    private MemberFinding throughHeader() {
        boolean bolted = said().head().filter(HeadFindings::isBolt).isPresent();
        Length thickness = stair.brief().stringers().stock().thickness();
        return fixed.across(new Fixed.Case(
                new Judging.Name("head", "heads on the header", "the fasteners of each head carry {} of what they may"),
                said().head(),
                woods -> bolted
                        ? new Joint(
                                woods.stringers(),
                                thickness,
                                Pulled.Grain.SIDE,
                                woods.header(),
                                thickness,
                                Optional.of(new StringerShape(stair).contactHeight()),
                                woods.wetness())
                        : intoEnd(woods, headerThickness(), Optional.of(new StringerShape(stair).contactHeight())),
                down(),
                "nobody said what holds each head to the header or its blocking: it must hold {} down, and the blocking"
                        + " must hold the same",
                headerAssumed() || basis.woods().stringersAreAssumed()));
    }

    private static boolean isBolt(Fasteners fasteners) {
        return fasteners instanceof Fasteners.Sized sized && sized.kind() == Fasteners.Kind.BOLT;
    }

    private MemberFinding hanger() {
        return fixed.rated(
                new Judging.Name(
                        "head-hanger", "metal hanger of each stringer", "each metal hanger carries {} of what it may"),
                said().hanger(),
                down(),
                "each metal hanger must be allowed to carry {} down; say what yours may");
    }
}
