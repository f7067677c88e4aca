package pitchboard.strength.eurocode;

/** How moist the timber becomes in use, and what that does to it (EN 1995-1-1, Tables 3.1 and 3.2, solid timber). */
public enum Service {
    /** Class 1: heated rooms, up to 65 % humidity. */
    CLASS_1("1", 0.60),
    /** Class 2: under a roof, up to 85 % humidity. */
    CLASS_2("2", 0.80),
    /** Class 3: in the open. */
    CLASS_3("3", 2.00);

    /** For how long the shortest load acts; its factor under a roof and in the open. */
    public enum Duration {
        PERMANENT(0.60, 0.50),
        LONG(0.70, 0.55),
        MEDIUM(0.80, 0.65),
        SHORT(0.90, 0.70),
        INSTANTANEOUS(1.10, 0.90);

        private final double covered;
        private final double open;

        Duration(double covered, double open) {
            this.covered = covered;
            this.open = open;
        }
    }

    private final String number;
    private final double creep;

    Service(String number, double creep) {
        this.number = number;
        this.creep = creep;
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
        return this == CLASS_3 ? duration.open : duration.covered;
    }
}
