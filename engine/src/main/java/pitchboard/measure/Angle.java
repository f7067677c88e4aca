package pitchboard.measure;

/** An angle as a code of practice prints it: an exact number of degrees. */
public record Angle(Ratio degrees) implements Quantity, Comparable<Angle> {
    /** An angle of a whole number of degrees. */
    public static Angle degrees(long whole) {
        return new Angle(Ratio.of(whole));
    }

    @Override
    public int compareTo(Angle other) {
        return degrees.compareTo(other.degrees);
    }
}
