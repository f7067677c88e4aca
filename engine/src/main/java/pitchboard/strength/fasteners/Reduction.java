package pitchboard.strength.fasteners;

/**
 * What a yield value is divided by, NDS 2018 Table 12.3.1B: {@code KD} for thin fasteners, and for others 4, 3.6 or 3.2
 * times {@code Kθ = 1 + 0.25 θ/90°}, θ the largest angle of load to grain in any member. A screw called 1/4 in or more with a
 * thinner root takes {@code KD Kθ}.
 */
record Reduction(Fastener fastener, double largestAngle) {
    double of(Mode mode) {
        if (fastener.yieldsAsThin()) {
            return fastener.nominal().isLarge() ? thin() * turned() : thin();
        }
        return turned()
                * switch (mode) {
                    case IM, IS -> 4;
                    case II -> 3.6;
                    case IIIM, IIIS, IV -> 3.2;
                };
    }

    /** {@code KD}: 2.2 up to 0.17 in, then 10 D + 0.5. */
    private double thin() {
        double d = fastener.root().inches();
        return d <= 0.17 ? 2.2 : 10 * d + 0.5;
    }

    private double turned() {
        return 1 + 0.25 * largestAngle / 90;
    }
}
