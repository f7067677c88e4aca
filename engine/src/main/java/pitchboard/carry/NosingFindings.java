package pitchboard.carry;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Fasteners;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.carry.fixings.Joint;
import pitchboard.carry.members.Basis;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Place;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;
import pitchboard.strength.Force;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.fasteners.Pulled;

/**
 * One load at the very edge of a nosing, beside a stringer: the front board tips over the riser cut, and what holds its
 * back edge is pulled. Statics; that the back fastener stands an inch from the edge is common practice, no source.
 */
record NosingFindings(Stair stair, Basis basis) {
    /** Half of the two inches that the load stands on, and as far as a fastener stands from the back edge. */
    private static final Length INSET = Length.inches(1);

    private static final Length DEEP = Length.inches(4);
    private static final Judging.Name TIPPING = new Judging.Name(
            "tread-nosing",
            "a load at the nosing's edge",
            "under a load at the nosing's edge the fasteners at the back of a tread board carry {} of what they may");

    List<MemberFinding> findings() {
        Fixed fixed = new Fixed(MemberFinding.Topic.JOINTS, basis, Place.EVERY_STEP);
        Length out = stair.riserCut(1).minus(stair.nosing(1).x()).minus(INSET);
        Length back = stair.brief().treads().boardWidth().minus(out).minus(INSET.times(2));
        if (!out.isPositive()) {
            return List.of(fixed.none(
                    TIPPING,
                    "a load at the very edge still stands over the level cut, so nothing tips",
                    Phrase.of("a load at the nosing's edge stands over the stringers")));
        }
        if (!back.isPositive()) {
            return List.of(fixed.open(
                    TIPPING,
                    Phrase.of(
                            "the front board lies on the level cut with too little to be held by: use a wider board")));
        }
        return List.of(fixed.pulled(new Fixed.Case(
                TIPPING,
                stair.brief().joints().treads().map(NosingFindings::one),
                woods -> new Joint(
                        woods.stringers(),
                        DEEP,
                        Pulled.Grain.SIDE,
                        woods.treads(),
                        stair.treadThickness(),
                        Optional.empty(),
                        woods.wetness()),
                tipping(out, back),
                "nobody said what holds the treads: at its back edge, over each stringer, every front board needs one"
                        + " screw that may be pulled with {}",
                basis.woods().stringersAreAssumed())));
    }

    /** The same, but one alone. */
    static Fasteners one(Fasteners all) {
        if (all instanceof Fasteners.Sized sized) {
            return new Fasteners.Sized(sized.kind(), sized.diameter(), sized.gauge(), sized.length(), 1);
        }
        return new Fasteners.Rated(((Fasteners.Rated) all).allowed(), 1);
    }

    private Asked tipping(Length out, Length back) {
        Force point = basis.loads().pointRaised();
        Force pull = point.times(out.approxMm() / back.approxMm());
        Figure figure = MemberChecks.figure(
                "T",
                "pull at the back edge, the load at the nosing's edge",
                "P·o ÷ b",
                basis.units().show(pull),
                new Figure.Input("P", basis.units().show(point)),
                new Figure.Input("o", out),
                new Figure.Input("b", back));
        return Asked.across("one load at the edge of the nosing, beside a stringer", figure, pull);
    }
}
