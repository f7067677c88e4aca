package pitchboard.strength;

/** A force, or the weight of a load. */
public record Force(double newtons) {
    public static final Force NONE = new Force(0);

    public static Force pounds(double pounds) {
        return new Force(pounds * Units.NEWTONS_PER_POUND);
    }

    public double pounds() {
        return newtons / Units.NEWTONS_PER_POUND;
    }

    public Force times(double factor) {
        return new Force(newtons * factor);
    }

    public Force plus(Force other) {
        return new Force(newtons + other.newtons);
    }

    public boolean isPositive() {
        return newtons > 0;
    }
}
