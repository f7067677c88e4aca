package pitchboard.strength.eurocode;

/**
 * How far a member sags at once and in the end (EN 1995-1-1, 2.2.3).
 *
 * @param permanentMm at once under what always lies on it
 * @param variableMm at once under what comes and goes
 * @param lasting {@code psi2}, the part of that which stays
 */
public record Deflections(double permanentMm, double variableMm, double lasting) {
    /** {@code winst}. */
    public double atOnceMm() {
        return permanentMm + variableMm;
    }

    /** {@code wfin = wG·(1 + kdef) + wQ·(1 + psi2·kdef)}. */
    public double finalMm(Service service) {
        return permanentMm * (1 + service.creep()) + variableMm * (1 + lasting * service.creep());
    }
}
