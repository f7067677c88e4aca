package pitchboard.stair;

import static pitchboard.Shapes.FAR;
import static pitchboard.Shapes.box;
import static pitchboard.Shapes.minus;
import static pitchboard.Shapes.mm;
import static pitchboard.Shapes.polygon;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;

/**
 * A stringer made the other way round: a sloping board with everything sawn off that is not wanted, by an independent
 * geometry library and from the measures alone. In the site frame, in millimetres.
 */
final class SawnStringer {
    /** Longer than any stair, and even when steep still within what the cuts reach. */
    private static final double LONG = FAR / 4;

    private final Stair stair;
    private final double rise;
    private final double run;
    private final int treads;
    private final double tread;
    private final double seat;
    private final double face;

    private SawnStringer(Stair stair) {
        this.stair = stair;
        Flight flight = stair.flight();
        this.rise = mm(flight.totalRise()) / flight.risers();
        this.run = mm(flight.run());
        this.treads = flight.headJoin() == HeadJoin.FLUSH ? flight.risers() : flight.risers() - 1;
        this.tread = mm(stair.brief().treads().thickness());
        double sole = stair.brief().foot() instanceof FootDetail.SoleBoard board ? mm(board.thickness()) : 0;
        this.seat = sole - mm(stair.site().lowerFinish());
        this.face = treads * run;
    }

    static Geometry of(Stair stair) {
        return new SawnStringer(stair).sawn();
    }

    private Geometry sawn() {
        Geometry wood = board();
        for (int step = 1; step <= treads; step++) {
            wood = minus(wood, box(-FAR, step * rise - tread, step * run, FAR));
        }
        wood = minus(wood, box(-FAR, -FAR, 0, FAR));
        wood = minus(wood, box(face, -FAR, FAR, FAR));
        wood = minus(wood, box(-FAR, -FAR, FAR, seat));
        return minus(atHead(wood), kicker());
    }

    /** Its top edge goes through the corners where a riser cut meets the level cut above it. */
    private Geometry board() {
        double slope = rise / run;
        double plumbDepth = mm(stair.brief().stringers().stock().depth()) * Math.hypot(rise, run) / run;
        double atOrigin = rise - tread;
        double left = atOrigin - LONG * slope;
        double right = atOrigin + LONG * slope;
        return polygon(-LONG, left, LONG, right, LONG, right - plumbDepth, -LONG, left - plumbDepth);
    }

    private Geometry atHead(Geometry wood) {
        HeadFixing fixing = stair.brief().headFixing();
        double top = treads * rise - tread;
        double bottom = lowestAtFace(wood);
        if (fixing instanceof HeadFixing.Ledger ledger) {
            return minus(wood, box(face - mm(ledger.thickness()), -FAR, FAR, bottom + mm(ledger.height())));
        }
        if (fixing instanceof HeadFixing.HangerBoard board) {
            double under = mm(board.height()) > top - bottom - 1e-9 ? -FAR : top - mm(board.height());
            return minus(wood, box(face - mm(board.thickness()), under, FAR, FAR));
        }
        return wood;
    }

    private double lowestAtFace(Geometry wood) {
        double lowest = Double.MAX_VALUE;
        for (Coordinate corner : wood.getCoordinates()) {
            lowest = Math.abs(corner.x - face) < 1e-6 ? Math.min(lowest, corner.y) : lowest;
        }
        return lowest;
    }

    private Geometry kicker() {
        return stair.brief().foot() instanceof FootDetail.Kicker kicker
                ? box(-FAR, -FAR, mm(kicker.depth()), seat + mm(kicker.height()))
                : box(-FAR, -FAR, -FAR + 1, -FAR + 1);
    }
}
