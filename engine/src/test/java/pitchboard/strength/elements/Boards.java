package pitchboard.strength.elements;

import java.util.ArrayList;
import java.util.List;
import pitchboard.strength.elements.mesh.Xy;
import pitchboard.strength.elements.throat.SlopedBeam;

/** Notched boards for tests, in mm, as they stand: x level, y up, the first corner at the first riser's foot. */
public final class Boards {
    public static final double INCH = 25.4;
    /** N/mm² in one psi, and N in one pound. */
    public static final double PSI = 4.4482216152605 / (INCH * INCH);

    public static final double POUND = 4.4482216152605;

    private Boards() {}

    /** Clear Douglas-fir of EL 1.6e6 psi in the plane along and tangential; the ratios of FPL-GTR-282, chapter 5. */
    public static Orthotropic douglasFir() {
        return ratios(0.050, 0.078, 0.449);
    }

    public static Orthotropic ratios(double across, double shear, double poisson) {
        double along = 1.6e6 * PSI;
        return new Orthotropic(along, across * along, shear * along, poisson);
    }

    /**
     * A stringer with a level seat and a plumb cut at its head; inches in, millimetres out.
     *
     * @param steps the number of level cuts
     */
    public record Stringer(double rise, double run, int steps, double depth) {
        public double hypotenuse() {
            return Math.hypot(rise, run);
        }

        public double cos() {
            return run / hypotenuse();
        }

        public double sin() {
            return rise / hypotenuse();
        }

        public double throat() {
            return depth - rise * run / hypotenuse();
        }

        /** From the board, along the grain from the first nosing and up from its lower edge, to where it stands. */
        public Xy stand(double along, double up) {
            double x = along + rise * sin();
            double y = up - (depth - rise * cos());
            return new Xy(INCH * (cos() * x - sin() * y), INCH * (sin() * x + cos() * y));
        }

        public Xy foot() {
            return stand(-rise * sin(), depth - rise * cos());
        }

        public Xy heel() {
            double up = depth - rise * cos();
            return stand(-rise * sin() + cos() * up / sin(), 0);
        }

        public Xy nosing(int step) {
            return stand(hypotenuse() * step, depth);
        }

        public Xy inner(int step) {
            return stand(hypotenuse() * step + run * cos(), depth - run * sin());
        }

        public Xy headBottom() {
            double along = hypotenuse() * (steps - 1) + run * cos();
            double up = depth - run * sin();
            return stand(along - sin() * up / cos(), 0);
        }

        public List<Xy> outline() {
            List<Xy> corners = new ArrayList<>();
            corners.add(foot());
            for (int step = 0; step < steps; step++) {
                corners.add(nosing(step));
                corners.add(inner(step));
            }
            corners.add(headBottom());
            corners.add(heel());
            return corners;
        }

        public Support pinAtFoot() {
            return Support.pin(foot(), heel());
        }

        public Support rollerAtHead() {
            return Support.roller(inner(steps - 1), headBottom());
        }

        /** 300 lb on the middle fifth of one level cut, counted from 0. */
        public EdgeLoad point(int step) {
            Xy from = nosing(step).toward(inner(step), 0.4);
            Xy to = nosing(step).toward(inner(step), 0.6);
            return EdgeLoad.down(from, to, 300 * POUND);
        }

        /** 40 psf on 18 in: 5 lb per inch of run on every level cut. */
        public List<EdgeLoad> everyTread() {
            List<EdgeLoad> loads = new ArrayList<>();
            for (int step = 0; step < steps; step++) {
                loads.add(EdgeLoad.down(nosing(step), inner(step), 5 * run * POUND));
            }
            return loads;
        }

        public Plate plate(Orthotropic wood, List<EdgeLoad> loads) {
            return plate(wood, 1.5, loads);
        }

        public Plate plate(Orthotropic wood, double thickness, List<EdgeLoad> loads) {
            return new Plate(
                    outline(), thickness * INCH, wood, new Xy(run, rise), List.of(pinAtFoot(), rollerAtHead()), loads);
        }

        /** A plain board with the same supports and loads. */
        public SlopedBeam beam(double depthInches, Orthotropic wood, double thickness, List<EdgeLoad> loads) {
            double lower = pinAtFoot().middle().x();
            double span = rollerAtHead().middle().x() - lower;
            List<SlopedBeam.Patch> patches = loads.stream()
                    .map(load -> new SlopedBeam.Patch(
                            load.from().x() - lower, load.to().x() - lower, -load.totalY()))
                    .toList();
            return new SlopedBeam(
                    span, cos(), depthInches * INCH, thickness * INCH, wood.alongMpa(), wood.shearMpa(), patches);
        }
    }
}
