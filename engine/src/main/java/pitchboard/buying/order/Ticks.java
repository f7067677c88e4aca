package pitchboard.buying.order;

import java.math.BigInteger;
import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/** The largest length that all others are whole multiples of. */
record Ticks(Length tick) {
    /** @param lengths none with a square root in it, not all zero */
    static Ticks of(List<Length> lengths) {
        Ratio common = Ratio.ZERO;
        for (Length length : lengths) {
            common = common(common, length.inMm().abs());
        }
        return new Ticks(Length.mm(common));
    }

    private static Ratio common(Ratio a, Ratio b) {
        BigInteger below = a.denominator().multiply(b.denominator());
        BigInteger above =
                a.numerator().multiply(b.denominator()).gcd(b.numerator().multiply(a.denominator()));
        return Ratio.of(above, below);
    }

    long count(Length length) {
        return length.wholeTimes(tick);
    }

    Length length(long ticks) {
        return tick.times(ticks);
    }
}
