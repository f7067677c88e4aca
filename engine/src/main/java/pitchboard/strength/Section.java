package pitchboard.strength;

import pitchboard.measure.Length;

/**
 * A rectangular section.
 *
 * @param breadth across the load
 * @param depth in the direction of the load
 */
public record Section(Length breadth, Length depth) {
    public Section {
        if (!breadth.isPositive() || !depth.isPositive()) {
            throw new IllegalArgumentException("a section has a breadth and a depth, not " + breadth + " by " + depth);
        }
    }

    public double breadthMm() {
        return breadth.approxMm();
    }

    public double depthMm() {
        return depth.approxMm();
    }

    /** {@code A = b·d}. */
    public double areaMm2() {
        return breadthMm() * depthMm();
    }

    /** {@code S = b·d² / 6}. */
    public double modulusMm3() {
        return breadthMm() * depthMm() * depthMm() / 6;
    }

    /** {@code I = b·d³ / 12}. */
    public double inertiaMm4() {
        return breadthMm() * depthMm() * depthMm() * depthMm() / 12;
    }

    /** The same section carrying over its other side. */
    public Section turned() {
        return new Section(/* breadth= */ depth, /* depth= */ breadth);
    }
}
