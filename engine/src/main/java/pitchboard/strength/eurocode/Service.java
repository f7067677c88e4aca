package pitchboard.strength.eurocode;

/** How moist the timber becomes in use, and what that does to it (EN 1995-1-1, Tables 3.1 and 3.2, solid timber). */
public enum Service {
    /** Class 1: heated rooms, up to 65 % humidity. */
    CLASS_1("1", 0.60, new double[] {0.60, 0.70, 0.80, 0.90, 1.10}),
    /** Class 2: under a roof, up to 85 % humidity. */
    CLASS_2("2", 0.80, new double[] {0.60, 0.70, 0.80, 0.90, 1.10}),
    /** Class 3: in the open. */
    CLASS_3("3", 2.00, new double[] {0.50, 0.55, 0.65, 0.70, 0.90});

    /** For how long the shortest load acts. */
    public enum Duration {
        PERMANENT,
        LONG,
        MEDIUM,
        SHORT,
        INSTANTANEOUS
    }

    private final String number;
    private final double creep;
    private final double[] strength;

    Service(String number, double creep, double[] strength) {
        this.number = number;
        this.creep = creep;
        this.strength = strength;
    }

    public String number() {
        return number;
    }

    /** {@code kdef}. */
    public double creep() {
        return creep;
    }

    /** {@code kmod}. */
    public double strength(Duration duration) {
        return strength[duration.ordinal()];
    }
}
