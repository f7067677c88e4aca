package pitchboard.stair;

import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;

/**
 * The steps of a straight flight: all rises are one nth of the total, all runs the same.
 *
 * @param risers 1 or more; with the floor as last step, 2 or more
 * @param totalRise between the finished surfaces
 * @param run of every step, nosing to nosing
 */
public record Flight(HeadJoin headJoin, int risers, Length totalRise, Length run) {
    public Flight {
        int least = headJoin == HeadJoin.FLUSH ? 1 : 2;
        if (risers < least || !totalRise.isPositive() || !run.isPositive()) {
            throw new IllegalArgumentException(
                    "no flight of " + risers + " risers, total rise " + totalRise + ", run " + run);
        }
    }

    /** {@code r = H / n}, exactly. */
    public Length rise() {
        return totalRise.dividedBy(risers);
    }

    public int treads() {
        return headJoin == HeadJoin.FLUSH ? risers : risers - 1;
    }

    /** Treads × run: from the first riser cut to the face of the header. */
    public Length totalRun() {
        return run.times(treads());
    }

    public Pitch pitch() {
        return Pitch.of(rise(), run);
    }
}
