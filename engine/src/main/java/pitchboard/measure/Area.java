package pitchboard.measure;

/** An exact area, as the product rule for rise and run needs it. */
public record Area(Ratio squareInches) implements Quantity, Comparable<Area> {
    /** The area of a rectangle with rational sides. */
    public static Area of(Length side, Length otherSide) {
        return new Area(side.inInches().times(otherSide.inInches()));
    }

    @Override
    public int compareTo(Area other) {
        return squareInches.compareTo(other.squareInches);
    }
}
