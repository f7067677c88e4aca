package pitchboard.strength.timber;

/** How a board is used: all that its adjustment factors ask for beside its size. */
public record Conditions(Duration duration, Moisture moisture, Heat heat, Treatment treatment, Sharing sharing) {
    /** Dry, at ordinary warmth, untreated, alone, under a load of ten years. */
    public static final Conditions ORDINARY =
            new Conditions(Duration.TEN_YEARS, Moisture.DRY, Heat.ORDINARY, Treatment.NONE, Sharing.ALONE);

    /** For how long the load acts in the life of the building, added up. */
    public enum Duration {
        PERMANENT(0.9, "its shortest load is permanent"),
        TEN_YEARS(1.0, "its shortest load, people on a floor or stair, adds up to ten years"),
        TWO_MONTHS(1.15, "its shortest load, snow, adds up to two months"),
        SEVEN_DAYS(1.25, "its shortest load, work on the roof, adds up to seven days"),
        TEN_MINUTES(1.6, "its shortest load, wind, adds up to ten minutes"),
        IMPACT(2.0, "its shortest load is a blow");

        private final double factor;
        private final String because;

        Duration(double factor, String because) {
            this.factor = factor;
            this.because = because;
        }

        double factor() {
            return factor;
        }

        String because() {
            return because;
        }
    }

    /** How wet the wood becomes in use: wet is more than 19 % of its dry weight, as outdoors. */
    public enum Moisture {
        DRY,
        WET
    }

    /** How hot the wood stays for long. */
    public enum Heat {
        /** Up to 100 °F. */
        ORDINARY,
        /** Above 100 and up to 125 °F. */
        WARM,
        /** Above 125 and up to 150 °F. */
        HOT
    }

    /** What was done to the wood against rot or fire. */
    public enum Treatment {
        NONE,
        /** Pressure treated, its surface whole. */
        PRESERVED,
        /** Pressure treated through cuts in its surface. */
        INCISED,
        /** Its values are the supplier's alone. */
        AGAINST_FIRE
    }

    /** Whether neighbours help. */
    public enum Sharing {
        ALONE,
        /** Three or more, no more than 24 in apart, joined by what spreads the load. */
        REPETITIVE
    }

    public Conditions with(Duration other) {
        return new Conditions(other, moisture, heat, treatment, sharing);
    }

    public Conditions with(Moisture other) {
        return new Conditions(duration, other, heat, treatment, sharing);
    }

    public Conditions with(Treatment other) {
        return new Conditions(duration, moisture, heat, other, sharing);
    }

    public Conditions with(Sharing other) {
        return new Conditions(duration, moisture, heat, treatment, other);
    }

    public Conditions with(Heat other) {
        return new Conditions(duration, moisture, other, treatment, sharing);
    }

    boolean isWet() {
        return moisture == Moisture.WET;
    }
}
