package pitchboard.carry;

import pitchboard.brief.FootDetail;
import pitchboard.brief.Stringers;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.parts.StringerSpacing;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Section;

/**
 * One stringer as a sloping beam.
 *
 * @param span over the plan, from support to support
 * @param bends the section that bends: the throat of a cut stringer, or the whole board
 * @param board as it was graded
 * @param takes width of the flight that it carries
 * @param stands length of its level cut on what it stands on
 * @param step from one tread to the next along the slope: the treads hold it that often
 */
record StringerCase(
        Length span, Pitch pitch, Section bends, Section board, Length takes, Length stands, Length step, boolean cut) {
    /** The stringer of a stair that carries most; its throat must be above zero. */
    static StringerCase of(Stair stair) {
        Stringers stringers = stair.brief().stringers();
        StringerShape shape = new StringerShape(stair);
        Length thickness = stringers.stock().thickness();
        Length throat = Length.mm(Decimals.ratio(shape.throat().approxMm(), 6));
        return new StringerCase(
                stair.flight().totalRun(),
                stair.pitch(),
                new Section(thickness, throat),
                new Section(thickness, shape.boardDepth()),
                takesMost(StringerSpacing.of(stair.brief())),
                standing(stair, shape),
                stair.pitch().alongForLevel(stair.run()),
                true);
    }

    private static Length standing(Stair stair, StringerShape shape) {
        Length toe = stair.brief().foot() instanceof FootDetail.Kicker kicker ? kicker.depth() : Length.ZERO;
        return shape.heel().x().minus(toe);
    }

    /** Half of the room to each neighbour; an outer one also all that lies outside it. */
    static Length takesInner(StringerSpacing across) {
        return across.spacing();
    }

    static Length takesOuter(StringerSpacing across) {
        Length beyond = across.stringers()
                .treadOverhang()
                .plus(across.stringers().stock().thickness().dividedBy(2));
        return across.spacing().dividedBy(2).plus(beyond);
    }

    static Length takesMost(StringerSpacing across) {
        return across.stringers().count() > 2 ? Length.max(takesInner(across), takesOuter(across)) : takesOuter(across);
    }

    StringerCase over(Length otherSpan) {
        return new StringerCase(otherSpan, pitch, bends, board, takes, stands, step, cut);
    }

    StringerCase bending(Section other) {
        return new StringerCase(span, pitch, other, board, takes, stands, step, cut);
    }

    /** The whole board, uncut, with cleats under the treads. */
    StringerCase solid() {
        return new StringerCase(span, pitch, board, board, takes, stands, step, false);
    }

    double cosine() {
        double slope = pitch.slope().approx();
        return 1 / Math.sqrt(1 + slope * slope);
    }

    double sine() {
        return cosine() * pitch.slope().approx();
    }
}
