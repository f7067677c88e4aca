package pitchboard.strength.fasteners;

/** How thick a fastener is, as tables print it: in thousandths of an inch, which no tape shows. */
public record Diameter(double inches) {
    public Diameter {
        if (!(inches > 0 && inches < 10)) {
            throw new IllegalArgumentException("a diameter is above 0 and below 10 in, got " + inches);
        }
    }

    /** From here on wood resists differently along and across its grain. */
    boolean isLarge() {
        return inches >= 0.25 - 1e-9;
    }
}
