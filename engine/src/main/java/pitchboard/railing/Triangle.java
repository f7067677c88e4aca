package pitchboard.railing;

import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.stair.Stair;

/**
 * The opening between a tread, the riser behind it and the underside of the bottom rail.
 *
 * <p>The riser is taken where its face is, under the nosing of the next tread, so no larger ball passes; where treads
 * do not overlap it is taken at the next nosing.
 *
 * @param aboveNosings from the line of the nosings plumb up to the rail's underside; zero or more
 */
public record Triangle(Stair stair, Length aboveNosings) {
    /** From nosing to riser along the tread. */
    private Length depth() {
        return Length.max(stair.run(), stair.brief().treads().width());
    }

    /**
     * The largest ball that passes: the circle that touches all three sides. With the legs {@code a} along the tread up
     * to where the rail meets its level and {@code c = a·r/g} up the riser, its diameter is {@code a + c − √(a² + c²)}.
     */
    public Length ball() {
        Pitch pitch = stair.pitch();
        Length along = depth().plus(pitch.levelFor(aboveNosings));
        return along.plus(pitch.riseOver(along)).minus(pitch.alongForLevel(along));
    }

    /**
     * How high above the nosings the rail may be for this ball just to fit; below zero when even a rail on the nosings
     * leaves more. {@code (b + b·r/g + b·√(1 + (r/g)²)) / 2 − depth·r/g}
     */
    public Length heightFor(Length ball) {
        Pitch pitch = stair.pitch();
        Length twice = ball.plus(pitch.riseOver(ball)).plus(pitch.alongForLevel(ball));
        return twice.dividedBy(2).minus(pitch.riseOver(depth()));
    }
}
