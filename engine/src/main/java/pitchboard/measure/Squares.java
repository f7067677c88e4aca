package pitchboard.measure;

import java.math.BigInteger;
import java.util.Optional;

/** Whole numbers and their whole square roots. */
final class Squares {
    private static final int BITS_OF_A_LONG = 62;

    private Squares() {}

    /** The root of a square; empty when the number, not negative, is none. */
    static Optional<BigInteger> findRoot(BigInteger number) {
        if (number.bitLength() <= BITS_OF_A_LONG) {
            long root = root(number.longValue());
            return root * root == number.longValue() ? Optional.of(BigInteger.valueOf(root)) : Optional.empty();
        }
        BigInteger root = floorRoot(number);
        return root.multiply(root).equals(number) ? Optional.of(root) : Optional.empty();
    }

    /** The largest whole number whose square is not above this one, which is not negative. */
    static BigInteger floorRoot(BigInteger number) {
        return number.bitLength() <= BITS_OF_A_LONG ? BigInteger.valueOf(root(number.longValue())) : number.sqrt();
    }

    /** Because a double has fewer digits than a long, its root may be one off. */
    private static long root(long number) {
        long root = (long) Math.sqrt((double) number);
        while (root * root > number) {
            root--;
        }
        while ((root + 1) * (root + 1) <= number) {
            root++;
        }
        return root;
    }
}
