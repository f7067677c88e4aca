package pitchboard.strength;

/** A bending moment. */
public record Moment(double nMm) {
    private static final double PER_FOOT_POUND = Units.NEWTONS_PER_POUND * Units.MM_PER_FOOT;

    public static Moment footPounds(double footPounds) {
        return new Moment(footPounds * PER_FOOT_POUND);
    }

    public double footPounds() {
        return nMm / PER_FOOT_POUND;
    }
}
