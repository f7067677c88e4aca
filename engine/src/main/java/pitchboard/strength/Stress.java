package pitchboard.strength;

/** Force over area, and the stiffness of a material; also the share of one stress in another. */
public record Stress(double nPerMm2) {
    private static final double PER_PSI = Units.NEWTONS_PER_POUND / (Units.MM_PER_INCH * Units.MM_PER_INCH);

    public static Stress psi(double psi) {
        return new Stress(psi * PER_PSI);
    }

    public double psi() {
        return nPerMm2 / PER_PSI;
    }

    public Stress times(double factor) {
        return new Stress(nPerMm2 * factor);
    }

    public double over(Stress other) {
        return nPerMm2 / other.nPerMm2;
    }
}
