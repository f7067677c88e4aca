package pitchboard.strength.fasteners;

import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Stress;
import pitchboard.strength.timber.Nds;

/**
 * One nail, screw or bolt.
 *
 * @param nominal of the shank: what it is called by
 * @param root what yields in shear: the shank of a nail or bolt, the thread's root of a screw
 * @param bendingYield its bending yield strength, Fyb
 */
public record Fastener(Kind kind, Diameter nominal, Diameter root, Stress bendingYield, Source source) {
    public enum Kind {
        NAIL("nail"),
        WOOD_SCREW("wood screw"),
        LAG_SCREW("lag screw"),
        BOLT("bolt");

        private final String inWords;

        Kind(String inWords) {
            this.inWords = inWords;
        }

        public String inWords() {
            return inWords;
        }
    }

    private static final Source YIELD = Nds.SPECIFICATION.read("Table I1");
    private static final double SLACK = 1e-9;

    /** A smooth nail, of 0.099 to 0.375 in. */
    public static Answer<Fastener> nail(Diameter shank) {
        return bendingYield(shank.inches()).map(yield -> new Fastener(Kind.NAIL, shank, shank, yield, YIELD));
    }

    /** A cut or rolled wood screw by its number, from 6 to 14. */
    public static Answer<Fastener> woodScrew(int number) {
        return ScrewSizes.woodScrew(number)
                .then(size -> bendingYield(size.nominal().inches())
                        .map(yield -> new Fastener(Kind.WOOD_SCREW, size.nominal(), size.root(), yield, YIELD)));
    }

    /** A lag screw with a cut thread, threaded where it is sheared, by its nominal diameter, 1/4 to 1 in. */
    public static Answer<Fastener> lagScrew(Diameter nominal) {
        return ScrewSizes.lagScrew(nominal)
                .map(size -> new Fastener(Kind.LAG_SCREW, nominal, size.root(), lagYield(nominal.inches()), YIELD));
    }

    /** A bolt with its full body where it is sheared, 1/4 to 1 in. */
    public static Answer<Fastener> bolt(Diameter diameter) {
        boolean known = diameter.inches() >= 0.25 - SLACK && diameter.inches() <= 1 + SLACK;
        return known
                ? Answer.known(new Fastener(Kind.BOLT, diameter, diameter, Stress.psi(45_000), YIELD))
                : Answer.unknown("bolts are reckoned from 1/4 to 1 in, not " + diameter.inches() + " in");
    }

    private static Stress lagYield(double inches) {
        double psi = inches < 0.28 ? 70_000 : inches < 0.34 ? 60_000 : 45_000;
        return Stress.psi(psi);
    }

    /** Table I1, common nails by their shank and wood screws by their nominal diameter: the thicker the softer. */
    private static Answer<Stress> bendingYield(double inches) {
        double[] upTo = {0.142, 0.177, 0.236, 0.273, 0.344, 0.375};
        double[] psi = {100_000, 90_000, 80_000, 70_000, 60_000, 45_000};
        if (inches >= 0.099 - SLACK) {
            for (int i = 0; i < upTo.length; i++) {
                if (inches <= upTo[i] + SLACK) {
                    return Answer.known(Stress.psi(psi[i]));
                }
            }
        }
        return Answer.unknown("no bending yield strength is tabled for a diameter of " + inches
                + " in; it goes from 0.099 to 0.375 in");
    }

    /** A threaded fastener whose root is thinner than a quarter inch yields by the rule for thin ones. */
    boolean yieldsAsThin() {
        return !root.isLarge();
    }
}
