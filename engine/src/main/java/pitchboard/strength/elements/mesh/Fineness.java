package pitchboard.strength.elements.mesh;

/**
 * How large the sides of triangles are, in mm: {@code atCornersMm} at an inward corner, growing by {@code growth} per mm
 * of distance up to {@code largestMm}.
 */
public record Fineness(double largestMm, double atCornersMm, double growth) {
    public Fineness {
        if (!(atCornersMm > 0 && largestMm >= atCornersMm && largestMm < 1e6)) {
            throw new IllegalArgumentException(
                    "sides of triangles from " + atCornersMm + " to " + largestMm + " mm cannot be made");
        }
        if (!(growth > 0 && growth <= 1)) {
            throw new IllegalArgumentException("triangles grow by more than 0 and at most 1 per mm, got " + growth);
        }
    }

    /** Equally large everywhere. */
    public static Fineness uniform(double sideMm) {
        return new Fineness(sideMm, sideMm, 1);
    }

    double at(double distanceFromCornerMm) {
        return Math.min(largestMm, atCornersMm + growth * distanceFromCornerMm);
    }
}
