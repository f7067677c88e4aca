package pitchboard.carry.members;

import java.util.Optional;
import pitchboard.brief.FootDetail;
import pitchboard.brief.Stringers;
import pitchboard.brief.Support;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.parts.StringerSpacing;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Section;
import pitchboard.strength.TwoSpans;

/**
 * One stringer as a sloping beam.
 *
 * @param span over the plan, from support to support; the longer one where there is one between
 * @param bends the section that bends: the throat of a cut stringer, or the whole board
 * @param board as it was graded
 * @param takes width of the flight that it carries
 * @param stands length of its level cut on what it stands on
 * @param step from one tread to the next along the slope: the treads hold it that often
 * @param supported its two spans, foot to head, where a post stands under it
 */
public record StringerCase(
        Length span,
        Pitch pitch,
        Section bends,
        Section board,
        Length takes,
        Length stands,
        Length step,
        boolean cut,
        Optional<TwoSpans> supported) {
    /** The stringer of a stair that carries most; its throat must be above zero. */
    public static StringerCase of(Stair stair) {
        Stringers stringers = stair.brief().stringers();
        StringerShape shape = new StringerShape(stair);
        Length thickness = stringers.stock().thickness();
        Length throat = Length.mm(Decimals.ratio(shape.throat().approxMm(), 6));
        Optional<TwoSpans> supported = supported(stair);
        return new StringerCase(
                supported.map(TwoSpans::longer).orElse(stair.flight().totalRun()),
                stair.pitch(),
                new Section(thickness, throat),
                new Section(thickness, shape.boardDepth()),
                takesMost(StringerSpacing.of(stair.brief())),
                standing(stair, shape),
                stair.pitch().alongForLevel(stair.run()),
                true,
                supported);
    }

    private static Optional<TwoSpans> supported(Stair stair) {
        Length whole = stair.flight().totalRun();
        return stair.brief()
                .support()
                .map(Support::at)
                .filter(at -> at.isPositive() && at.isLessThan(whole))
                .map(at -> new TwoSpans(at, whole.minus(at)));
    }

    /** The same with a post under it. */
    public StringerCase supportedAt(TwoSpans spans) {
        return new StringerCase(spans.longer(), pitch, bends, board, takes, stands, step, cut, Optional.of(spans));
    }

    /** From the foot to the next support. */
    public Length footSpan() {
        return supported.map(TwoSpans::first).orElse(span);
    }

    /** From the head to the next support. */
    public Length headSpan() {
        return supported.map(TwoSpans::second).orElse(span);
    }

    public StringerCase taking(Length strip) {
        return new StringerCase(span, pitch, bends, board, strip, stands, step, cut, supported);
    }

    private static Length standing(Stair stair, StringerShape shape) {
        FootDetail foot = stair.brief().foot();
        Length heel = shape.heel().x();
        if (foot instanceof FootDetail.SoleBoard sole) {
            return Length.min(heel, sole.width());
        }
        return foot instanceof FootDetail.Kicker kicker ? heel.minus(kicker.depth()) : heel;
    }

    /** Half of the room to each neighbour; an outer one also all that lies outside it. */
    public static Length takesInner(StringerSpacing across) {
        return across.spacing();
    }

    public static Length takesOuter(StringerSpacing across) {
        Length beyond = across.stringers()
                .treadOverhang()
                .plus(across.stringers().stock().thickness().dividedBy(2));
        return across.spacing().dividedBy(2).plus(beyond);
    }

    public static Length takesMost(StringerSpacing across) {
        return across.stringers().count() > 2 ? Length.max(takesInner(across), takesOuter(across)) : takesOuter(across);
    }

    public StringerCase over(Length otherSpan) {
        return new StringerCase(otherSpan, pitch, bends, board, takes, stands, step, cut, Optional.empty());
    }

    public StringerCase bending(Section other) {
        return new StringerCase(span, pitch, other, board, takes, stands, step, cut, supported);
    }

    /** The whole board, uncut, with cleats under the treads. */
    public StringerCase solid() {
        return new StringerCase(span, pitch, board, board, takes, stands, step, false, supported);
    }

    public double cosine() {
        double slope = pitch.slope().approx();
        return 1 / Math.sqrt(1 + slope * slope);
    }

    public double sine() {
        return cosine() * pitch.slope().approx();
    }
}
