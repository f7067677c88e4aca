package pitchboard.measure;

import java.math.BigInteger;

/** What whole numbers need to make a ratio of two. */
final class Whole {
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

    static BigInteger floorDivide(BigInteger numerator, BigInteger positiveDenominator) {
        BigInteger[] parts = numerator.divideAndRemainder(positiveDenominator);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
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
