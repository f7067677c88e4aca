package pitchboard.strength.fasteners;

import pitchboard.strength.Answer;

/** Nominal and root diameters of screws, in inches; NDS 2018 Appendix L, from memory, check before relying on them. */
final class ScrewSizes {
    /** What a screw is called by, and what is left inside its thread. */
    record Size(Diameter nominal, Diameter root) {}

    /** Number, nominal, root. */
    private static final double[][] WOOD_SCREWS = {
        {6, 0.138, 0.113},
        {7, 0.151, 0.122},
        {8, 0.164, 0.131},
        {9, 0.177, 0.142},
        {10, 0.190, 0.152},
        {12, 0.216, 0.171},
        {14, 0.242, 0.196}
    };

    /** Nominal, root. */
    private static final double[][] LAG_SCREWS = {
        {0.25, 0.173},
        {0.3125, 0.227},
        {0.375, 0.265},
        {0.4375, 0.328},
        {0.5, 0.371},
        {0.625, 0.471},
        {0.75, 0.579},
        {0.875, 0.683},
        {1, 0.780}
    };

    private ScrewSizes() {}

    static Answer<Size> woodScrew(int number) {
        for (double[] row : WOOD_SCREWS) {
            if (row[0] == number) {
                return Answer.known(new Size(new Diameter(row[1]), new Diameter(row[2])));
            }
        }
        return Answer.unknown("no wood screw number " + number + " is tabled; there are 6, 7, 8, 9, 10, 12 and 14");
    }

    static Answer<Size> lagScrew(Diameter nominal) {
        for (double[] row : LAG_SCREWS) {
            if (Math.abs(row[0] - nominal.inches()) < 1e-9) {
                return Answer.known(new Size(nominal, new Diameter(row[1])));
            }
        }
        return Answer.unknown("no lag screw of " + nominal.inches()
                + " in is tabled; there are 1/4 to 1/2 by sixteenths, and 5/8 to 1 by eighths");
    }
}
