package pitchboard.bench;

import java.util.ArrayList;
import java.util.List;
import pitchboard.strength.elements.EdgeLoad;
import pitchboard.strength.elements.Effort;
import pitchboard.strength.elements.Orthotropic;
import pitchboard.strength.elements.Plate;
import pitchboard.strength.elements.Support;
import pitchboard.strength.elements.mesh.Fineness;
import pitchboard.strength.elements.mesh.Xy;

/** A 2x12 of Douglas-fir cut 7.5 by 10 in with ten steps, 300 lb on the fifth; fixed at its seat, bearing at its head. */
final class TenSteps {
    private static final double INCH = 25.4;
    private static final double PSI = 4.4482216152605 / (INCH * INCH);
    private static final double DEPTH = 11.25 * INCH;

    private TenSteps() {}

    static Plate plate() {
        List<Xy> corners = new ArrayList<>();
        corners.add(place(0, 0));
        for (int step = 0; step < 10; step++) {
            corners.add(place(10 * step, 7.5 * (step + 1)));
            corners.add(place(10 * (step + 1), 7.5 * (step + 1)));
        }
        // The lower edge runs 5.25 in below the inner corners, square to a slope of 3 in 4: 6.5625 in plumb, 8.75
        // level.
        corners.add(place(100, 75 - 6.5625));
        corners.add(place(8.75, 0));
        Orthotropic wood = new Orthotropic(1.6e6 * PSI, 0.050 * 1.6e6 * PSI, 0.078 * 1.6e6 * PSI, 0.449);
        EdgeLoad load = EdgeLoad.down(place(44, 37.5), place(46, 37.5), 300 * 4.4482216152605);
        List<Support> supports = List.of(
                Support.fixed(place(0, 0), place(8.75, 0)), Support.bearing(place(100, 75), place(100, 75 - 6.5625)));
        return new Plate(corners, 1.5 * INCH, wood, new Xy(4, 3), supports, List.of(load));
    }

    private static Xy place(double x, double y) {
        return new Xy(INCH * x, INCH * y);
    }

    /** One mesh with sides half as long for each further halving. */
    static Effort oneMesh(int halvings) {
        double part = Math.pow(2, halvings);
        return new Effort(new Fineness(0.4 * DEPTH / part, DEPTH / 600 / part, 1 / part), 1, INCH);
    }

    static Effort thorough() {
        return Effort.thorough(DEPTH);
    }
}
