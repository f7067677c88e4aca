package pitchboard.strength.timber;

import pitchboard.measure.Length;
import pitchboard.source.Clause;
import pitchboard.strength.Factor;

/** The factors that follow from how a board is used, each with its reason. */
record CommonFactors(Conditions use) {
    private static final String WET = "wet service";
    private static final String INCISING = "incising";
    private static final String HEAT = "temperature";
    private static final double SMALL_BENDING_PSI = 1150;
    private static final double SMALL_COMPRESSION_PSI = 750;
    private static final Clause WET_CLAUSE = Nds.SUPPLEMENT.read("Table 4A, wet service factor");
    private static final Clause HEAT_CLAUSE = Nds.SPECIFICATION.memory("2.3.3");
    private static final Clause INCISING_CLAUSE = Nds.SPECIFICATION.read("4.3.8");

    Factor duration() {
        Clause clause = Nds.SPECIFICATION.read("2.3.2");
        boolean tooShort =
                use.treatment() != Conditions.Treatment.NONE && use.duration().factor() > 1.6;
        return tooShort
                ? new Factor("CD", "load duration", 1.6, "it may not be more for treated wood", clause)
                : new Factor(
                        "CD",
                        "load duration",
                        use.duration().factor(),
                        use.duration().because(),
                        clause);
    }

    Factor wet(double factor) {
        return use.isWet()
                ? new Factor("CM", WET, factor, "it is wet in use, more than 19 % moisture", WET_CLAUSE)
                : Factor.idle("CM", WET, "it stays dry in use", WET_CLAUSE);
    }

    Factor wetSpares(String what) {
        return use.isWet() ? Factor.idle("CM", WET, "wet does not weaken it against " + what, WET_CLAUSE) : wet(1);
    }

    /** @param weighed {@code Fb·CF} in psi */
    Factor wetBending(double weighed) {
        return use.isWet() && weighed <= SMALL_BENDING_PSI
                ? Factor.idle("CM", WET, "wet, but Fb × CF is no more than 1150 psi", WET_CLAUSE)
                : wet(0.85);
    }

    /** @param weighed {@code Fc·CF} in psi */
    Factor wetCompression(double weighed) {
        return use.isWet() && weighed <= SMALL_COMPRESSION_PSI
                ? Factor.idle("CM", WET, "wet, but Fc × CF is no more than 750 psi", WET_CLAUSE)
                : wet(0.8);
    }

    /** What is hot is weaker, and weaker still when it is wet as well. */
    Factor heat() {
        return switch (use.heat()) {
            case ORDINARY -> cool();
            case WARM -> warm(use.isWet() ? 0.7 : 0.8);
            case HOT -> warm(use.isWet() ? 0.5 : 0.7);
        };
    }

    /** On stiffness and on a pull along the grain, which heat hurts less. */
    Factor heatGently() {
        return use.heat() == Conditions.Heat.ORDINARY ? cool() : warm(0.9);
    }

    private static Factor cool() {
        return Factor.idle("Ct", HEAT, "it stays below 100 °F", HEAT_CLAUSE);
    }

    private Factor warm(double factor) {
        String because = use.heat() == Conditions.Heat.WARM ? "it stays at 100 to 125 °F" : "it stays at 125 to 150 °F";
        return new Factor("Ct", HEAT, factor, because, HEAT_CLAUSE);
    }

    Factor incising() {
        return incised()
                ? new Factor("Ci", INCISING, 0.8, "its surface is cut for the treatment", INCISING_CLAUSE)
                : Factor.idle("Ci", INCISING, whole(), INCISING_CLAUSE);
    }

    Factor incisingStiffness() {
        Clause clause = Nds.SPECIFICATION.memory("4.3.8");
        return incised()
                ? new Factor("Ci", INCISING, 0.95, "its surface is cut for the treatment", clause)
                : Factor.idle("Ci", INCISING, whole(), clause);
    }

    Factor incisingSpares(String what) {
        return Factor.idle(
                "Ci",
                INCISING,
                incised() ? "incising does not weaken it against " + what : whole(),
                Nds.SPECIFICATION.memory("4.3.8"));
    }

    private boolean incised() {
        return use.treatment() == Conditions.Treatment.INCISED;
    }

    private String whole() {
        return use.treatment() == Conditions.Treatment.NONE
                ? "it is not treated"
                : "it is treated, but its surface is not cut";
    }

    Factor repetitive() {
        Clause clause = Nds.SPECIFICATION.memory("4.3.9");
        String name = "repetitive member";
        return use.sharing() == Conditions.Sharing.REPETITIVE
                ? new Factor(
                        "Cr", name, 1.15, "three or more, no more than 24 in apart, joined so that they share", clause)
                : Factor.idle("Cr", name, "no help from its neighbours is counted on", clause);
    }

    /** {@code Cb = (lb + 3/8) / lb} for a short support away from the end. */
    Factor bearingArea(Length length, Length toEnd) {
        Clause clause = Nds.SPECIFICATION.memory("3.10.4");
        String name = "bearing area";
        double inches = length.approxMm() / 25.4;
        if (length.isAtLeast(Length.inches(6))) {
            return Factor.idle("Cb", name, "the support is 6 in long or more", clause);
        }
        return toEnd.isLessThan(Length.inches(3))
                ? Factor.idle("Cb", name, "the support is less than 3 in from the end", clause)
                : new Factor("Cb", name, (inches + 0.375) / inches, "a short support away from the end", clause);
    }
}
