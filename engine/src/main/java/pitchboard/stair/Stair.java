package pitchboard.stair;

import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.plane.Point;
import pitchboard.site.Overhead;
import pitchboard.site.Site;

/**
 * One stair for one site and brief: every height and distance of its steps follows from these three.
 *
 * <p>Site frame: y up from the finished surface at the foot; x from the first riser cut toward the upper floor.
 * Steps count from 1 at the foot.
 */
public record Stair(Site site, Brief brief, Flight flight) {
    public Length rise() {
        return flight.rise();
    }

    public Length run() {
        return flight.run();
    }

    public Pitch pitch() {
        return flight.pitch();
    }

    public int treads() {
        return flight.treads();
    }

    public Length treadThickness() {
        return brief.treads().thickness();
    }

    /** Thickness of the riser boards, zero when open: nosings and foot stand this far in front of the cuts. */
    public Length riserThickness() {
        return brief.risers().inFront();
    }

    /** How far each nosing reaches in front of the riser below it: {@code k·w + (k − 1)·q − g}. May be negative. */
    public Length projection() {
        return brief.treads().width().minus(run());
    }

    /** Where the stringer stands: above the finished surface on a sole board, below it when a finish comes later. */
    public Length seat() {
        Length sole = brief.foot() instanceof FootDetail.SoleBoard board ? board.thickness() : Length.ZERO;
        return sole.minus(site.lowerFinish());
    }

    /** Height of level cut {@code step}: {@code i·r − t}. */
    public Length levelCut(int step) {
        return rise().times(step).minus(treadThickness());
    }

    /** Place of riser cut {@code step}: {@code (i − 1)·g}. The cut after the last tread is the header's face. */
    public Length riserCut(int step) {
        return run().times(step - 1L);
    }

    /** The face of the header: treads × run from the first riser cut. */
    public Length headerFace() {
        return flight.totalRun();
    }

    /** Where the foot lands: the front of the first riser, level from the header's face. */
    public Length landing() {
        return headerFace().plus(riserThickness());
    }

    /** The front edge of tread {@code step}, on its walking surface. */
    public Point nosing(int step) {
        Length back = run().times(step).minus(riserThickness());
        return Point.of(back.minus(brief.treads().width()), rise().times(step));
    }

    /** From the stringer's seat to the first level cut: {@code r − t − seat}. */
    public Length firstCut() {
        return levelCut(1).minus(seat());
    }

    /** Between the top of one tread and the underside of the next. */
    public Length openingBetweenTreads() {
        return rise().minus(treadThickness());
    }

    /** Level space from the header's face to the first nosing, or to the first riser when that stands in front. */
    public Length spaceTaken() {
        return landing().plus(Length.max(projection(), Length.ZERO));
    }

    /**
     * The walking surface under x: the slope through the nosings, level with the floors beyond its ends.
     */
    public Length walkingLine(Length x) {
        Point first = nosing(1);
        if (x.isLessThan(first.x())) {
            return Length.ZERO;
        }
        Length onSlope = first.y().plus(pitch().riseOver(x.minus(first.x())));
        return Length.min(onSlope, flight.totalRise());
    }

    /** The tightest place under what is above the flight; empty when nothing is. */
    public Optional<Headroom> headroom() {
        return site.overheads().stream().map(this::headroomUnder).reduce(Headroom::tighter);
    }

    private Headroom headroomUnder(Overhead overhead) {
        // The walking line climbs toward the head, so the edge nearest the head is the tightest.
        Length x = headerFace().minus(overhead.from());
        Length underside = overhead.underside().value().minus(site.lowerFinish());
        Length floor = walkingLine(x);
        return new Headroom(overhead, Point.of(x, floor), underside.minus(floor));
    }
}
