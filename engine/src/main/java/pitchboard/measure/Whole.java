package pitchboard.measure;

import java.math.BigInteger;

/** What whole numbers need to make a ratio of two. */
final class Whole {
    /** Whole numbers up to this are exact in a double. */
    private static final long EXACT_DOUBLES = 1L << 53;

    private Whole() {}

    /** Of two that are not negative. */
    static long greatestCommonDivisor(long a, long b) {
        long x = a;
        long y = b;
        while (y != 0) {
            if (x <= Integer.MAX_VALUE && y <= Integer.MAX_VALUE) {
                return greatestCommonDivisor((int) x, (int) y);
            }
            long rest = x % y;
            x = y;
            y = rest;
        }
        return x;
    }

    /** Because dividing ints takes much less than dividing longs. */
    private static int greatestCommonDivisor(int a, int b) {
        int x = a;
        int y = b;
        while (y != 0) {
            int rest = x % y;
            x = y;
            y = rest;
        }
        return x;
    }

    /** Whether the product surely is within 2^62 of zero; a few that are may be denied. */
    static boolean productFits(long a, long b) {
        return (a == (int) a && b == (int) b)
                || Long.numberOfLeadingZeros(Math.abs(a)) + Long.numberOfLeadingZeros(Math.abs(b)) >= Long.SIZE + 2;
    }

    static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }

    /** How {@code a·b} compares with {@code c·d}. */
    static int compareProducts(long a, long b, long c, long d) {
        return productFits(a, b) && productFits(c, d)
                ? Long.compare(a * b, c * d)
                : product(a, b).compareTo(product(c, d));
    }

    static BigInteger floorDivide(BigInteger numerator, BigInteger positiveDenominator) {
        BigInteger[] parts = numerator.divideAndRemainder(positiveDenominator);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }

    /** The double nearest to a quotient. Where both casts are exact the division alone rounds. */
    static double approximateQuotient(long numerator, long positiveDenominator) {
        return Math.abs(numerator) <= EXACT_DOUBLES && positiveDenominator <= EXACT_DOUBLES
                ? (double) numerator / positiveDenominator
                : approximateQuotient(BigInteger.valueOf(numerator), BigInteger.valueOf(positiveDenominator));
    }

    /**
     * The double nearest to a quotient. Divides to 62 bits and keeps a last one for all that was cut off, so that the cast
     * alone rounds.
     */
    static double approximateQuotient(BigInteger numerator, BigInteger positiveDenominator) {
        BigInteger top = numerator.abs();
        int shift = 62 - top.bitLength() + positiveDenominator.bitLength();
        BigInteger[] parts = top.shiftLeft(Math.max(shift, 0))
                .divideAndRemainder(positiveDenominator.shiftLeft(Math.max(-shift, 0)));
        long quotient = parts[0].longValue() | Math.abs(parts[1].signum());
        return numerator.signum() * Math.scalb((double) quotient, -shift);
    }
}
