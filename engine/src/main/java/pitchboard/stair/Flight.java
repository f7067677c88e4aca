package pitchboard.stair;

import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;

/**
 * The steps of a straight flight: all rises are one nth of the total, all runs the same. What follows from that is
 * worked out once, since the solver asks it of every candidate many times.
 */
public final class Flight {
    private final HeadJoin headJoin;
    private final int risers;
    private final Length totalRise;
    private final Length run;
    private final Length rise;
    private final Length totalRun;
    private final Pitch pitch;

    /**
     * A flight of so many risers.
     *
     * @param risers 1 or more; with the floor as last step, 2 or more
     * @param totalRise between the finished surfaces
     * @param run of every step, nosing to nosing
     */
    public Flight(HeadJoin headJoin, int risers, Length totalRise, Length run) {
        int least = headJoin == HeadJoin.FLUSH ? 1 : 2;
        if (risers < least || !totalRise.isPositive() || !run.isPositive()) {
            throw new IllegalArgumentException(
                    "no flight of " + risers + " risers, total rise " + totalRise + ", run " + run);
        }
        this.headJoin = headJoin;
        this.risers = risers;
        this.totalRise = totalRise;
        this.run = run;
        this.rise = totalRise.dividedBy(risers);
        this.totalRun = run.times(treads());
        this.pitch = Pitch.of(rise, run);
    }

    public HeadJoin headJoin() {
        return headJoin;
    }

    public int risers() {
        return risers;
    }

    public Length totalRise() {
        return totalRise;
    }

    public Length run() {
        return run;
    }

    /** {@code r = H / n}, exactly. */
    public Length rise() {
        return rise;
    }

    public int treads() {
        return headJoin == HeadJoin.FLUSH ? risers : risers - 1;
    }

    /** Treads × run: from the first riser cut to the face of the header. */
    public Length totalRun() {
        return totalRun;
    }

    public Pitch pitch() {
        return pitch;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Flight that
                && headJoin == that.headJoin
                && risers == that.risers
                && totalRise.equals(that.totalRise)
                && run.equals(that.run);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * risers + totalRise.hashCode()) + run.hashCode();
    }

    @Override
    public String toString() {
        return risers + " risers over " + totalRise + ", run " + run + ", " + headJoin;
    }
}
