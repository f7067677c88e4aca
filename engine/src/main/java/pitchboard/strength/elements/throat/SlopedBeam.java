package pitchboard.strength.elements.throat;

import java.util.ArrayList;
import java.util.List;

/**
 * A straight beam of one rectangular section, on a slope, simply supported so that it can carry plumb forces only: what a
 * board of that depth would do by itself. Level distances are measured from the lower support.
 *
 * @param spanMm level, between the supports
 * @param cos of the slope, above 0
 * @param depthMm square to the slope
 * @param loads plumb, in level measure; they may stand beyond the supports
 */
public record SlopedBeam(
        double spanMm,
        double cos,
        double depthMm,
        double thicknessMm,
        double alongMpa,
        double shearMpa,
        List<Patch> loads) {
    /** Shear is spread over a rectangle so that it yields as if it acted on five sixths of it. */
    private static final double SHEAR_FORM = 1.2;

    private static final int STATIONS = 1000;
    /** A post lifts as if at one place. */
    private static final double POST_MM = 1e-3;

    /** A force of {@code downN} spread evenly over a level stretch that has some length. */
    public record Patch(double fromMm, double toMm, double downN) {
        private double middle() {
            return (fromMm + toMm) / 2;
        }

        /** The part of it that stands before a place. */
        private double before(double x) {
            return downN * Math.min(1, Math.max(0, (x - fromMm) / (toMm - fromMm)));
        }

        private double momentAbout(double x) {
            double part = before(x);
            return part * (x - (fromMm + Math.min(toMm, Math.max(x, fromMm))) / 2);
        }
    }

    public SlopedBeam {
        loads = List.copyOf(loads);
        boolean sound = spanMm > 0 && cos > 0 && cos <= 1 && depthMm > 0 && thicknessMm > 0;
        if (!(sound && alongMpa > 0 && shearMpa > 0)) {
            throw new IllegalArgumentException("a beam needs a span, a section and a stiffness above zero");
        }
    }

    public SlopedBeam withDepth(double newDepthMm) {
        return new SlopedBeam(spanMm, cos, newDepthMm, thicknessMm, alongMpa, shearMpa, loads);
    }

    /**
     * The same beam where it runs on over a post: the post is a load that lifts, just so much that the beam neither sinks
     * nor rises there by bending alone. Under an even load that is the equation of three moments.
     *
     * @param atMm level, between the supports
     */
    public SlopedBeam over(double atMm) {
        if (!(atMm > 0 && atMm < spanMm)) {
            throw new IllegalArgumentException("a post stands between the supports, not at " + atMm);
        }
        double lift = fallAt(atMm) / with(List.of(post(atMm, -1))).fallAt(atMm);
        List<Patch> all = new ArrayList<>(loads);
        all.add(post(atMm, lift));
        return with(all);
    }

    private static Patch post(double atMm, double liftN) {
        return new Patch(atMm - POST_MM / 2, atMm + POST_MM / 2, -liftN);
    }

    private SlopedBeam with(List<Patch> others) {
        return new SlopedBeam(spanMm, cos, depthMm, thicknessMm, alongMpa, shearMpa, others);
    }

    /** Upward force of the lower support, in N. */
    public double lowerReactionN() {
        double moment = 0;
        for (Patch each : loads) {
            moment += each.downN() * (spanMm - each.middle());
        }
        return moment / spanMm;
    }

    /** Bending moment at a level distance within the span, N mm; above zero when the lower edge is stretched. */
    public double moment(double x) {
        double moment = lowerReactionN() * x;
        for (Patch each : loads) {
            moment -= each.momentAbout(x);
        }
        return moment;
    }

    private double plumbShear(double x) {
        double shear = lowerReactionN();
        for (Patch each : loads) {
            shear -= each.before(x);
        }
        return shear;
    }

    /** The largest bending stress within the span, M ÷ (b d² / 6), N/mm². */
    public double bendingMpa() {
        double most = 0;
        for (int i = 0; i <= STATIONS; i++) {
            most = Math.max(most, Math.abs(moment(station(i))));
        }
        return most / (thicknessMm * depthMm * depthMm / 6);
    }

    private double station(int index) {
        return spanMm * index / STATIONS;
    }

    /** The largest plumb fall within the span, in mm, from bending alone. */
    public double fallFromBendingMm() {
        return largestFall(0);
    }

    /** The largest plumb fall within the span, in mm, from bending and shear. */
    public double fallMm() {
        return largestFall(SHEAR_FORM * cos / (shearMpa * thicknessMm * depthMm));
    }

    private double largestFall(double perShear) {
        double most = 0;
        for (double each : falls(perShear)) {
            most = Math.max(most, each);
        }
        return most;
    }

    /** From bending alone, between two stations in a straight line. */
    private double fallAt(double x) {
        double[] falls = falls(0);
        double place = x / spanMm * STATIONS;
        int before = Math.min(STATIONS - 1, (int) place);
        return falls[before] + (place - before) * (falls[before + 1] - falls[before]);
    }

    /**
     * Integrates {@code w'' = -M / (E I cos)} and {@code w' = k V cos / (G A)} over the level distance and turns the result
     * until both ends stay where they are.
     *
     * @param perShear what a unit of plumb shear adds to the slope
     */
    private double[] falls(double perShear) {
        double inertia = thicknessMm * depthMm * depthMm * depthMm / 12;
        double perMoment = 1 / (alongMpa * inertia * cos);
        double step = spanMm / STATIONS;
        double[] fall = new double[STATIONS + 1];
        double turned = 0;
        for (int i = 0; i < STATIONS; i++) {
            double middle = (station(i) + station(i + 1)) / 2;
            double bend = perMoment * moment(middle) * step;
            fall[i + 1] = fall[i] + step * (turned - bend / 2 + perShear * plumbShear(middle));
            turned -= bend;
        }
        double atEnd = fall[STATIONS];
        for (int i = 0; i <= STATIONS; i++) {
            fall[i] -= atEnd * i / STATIONS;
        }
        return fall;
    }
}
