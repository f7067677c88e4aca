package pitchboard.strength;

import pitchboard.measure.Length;

/** A rectangular section. Its sides as near numbers are worked out once, since every formula asks for them. */
public final class Section {
    private final Length breadth;
    private final Length depth;
    private final double breadthMm;
    private final double depthMm;

    /**
     * A section.
     *
     * @param breadth across the load, above zero
     * @param depth in the direction of the load, above zero
     */
    public Section(Length breadth, Length depth) {
        if (!breadth.isPositive() || !depth.isPositive()) {
            throw new IllegalArgumentException("a section has a breadth and a depth, not " + breadth + " by " + depth);
        }
        this.breadth = breadth;
        this.depth = depth;
        this.breadthMm = breadth.approxMm();
        this.depthMm = depth.approxMm();
    }

    public Length breadth() {
        return breadth;
    }

    public Length depth() {
        return depth;
    }

    public double breadthMm() {
        return breadthMm;
    }

    public double depthMm() {
        return depthMm;
    }

    /** {@code A = b·d}. */
    public double areaMm2() {
        return breadthMm * depthMm;
    }

    /** {@code S = b·d² / 6}. */
    public double modulusMm3() {
        return breadthMm * depthMm * depthMm / 6;
    }

    /** {@code I = b·d³ / 12}. */
    public double inertiaMm4() {
        return breadthMm * depthMm * depthMm * depthMm / 12;
    }

    /** The same section carrying over its other side. */
    public Section turned() {
        return new Section(/* breadth= */ depth, /* depth= */ breadth);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Section that && breadth.equals(that.breadth) && depth.equals(that.depth);
    }

    @Override
    public int hashCode() {
        return 31 * breadth.hashCode() + depth.hashCode();
    }

    @Override
    public String toString() {
        return breadth + " by " + depth;
    }
}
