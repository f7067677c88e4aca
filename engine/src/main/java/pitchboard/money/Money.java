package pitchboard.money;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import pitchboard.measure.Ratio;

/**
 * An exact amount, of any number of decimals: a price per foot may be finer than the coin. Nothing rounds until
 * {@link #toCoin} is asked. Immutable.
 */
public record Money(BigDecimal amount, Currency currency) implements Comparable<Money> {
    public Money {
        amount = amount.signum() == 0 ? BigDecimal.ZERO : amount.stripTrailingZeros();
    }

    public static Money none(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /** So many of the smallest coin. */
    public static Money ofCoins(long coins, Currency currency) {
        return new Money(new BigDecimal(BigInteger.valueOf(coins), currency.places()), currency);
    }

    /** @throws IllegalArgumentException when the currencies differ */
    public Money plus(Money other) {
        return new Money(amount.add(same(other).amount), currency);
    }

    /** @throws IllegalArgumentException when the currencies differ */
    public Money minus(Money other) {
        return new Money(amount.subtract(same(other).amount), currency);
    }

    public Money times(long count) {
        return new Money(amount.multiply(BigDecimal.valueOf(count)), currency);
    }

    /** The product, rounded to the coin; half a coin goes away from zero. */
    public Money times(Ratio factor) {
        BigDecimal product = amount.multiply(new BigDecimal(factor.numerator()));
        BigDecimal rounded =
                product.divide(new BigDecimal(factor.denominator()), currency.places(), RoundingMode.HALF_UP);
        return new Money(rounded, currency);
    }

    /** Rounded to the coin; half a coin goes away from zero, as a till rounds. */
    public Money toCoin() {
        return new Money(amount.setScale(currency.places(), RoundingMode.HALF_UP), currency);
    }

    /**
     * How many of the smallest coin.
     *
     * @throws ArithmeticException when it is not a whole number of them, or too many for a long
     */
    public long coins() {
        return amount.movePointRight(currency.places()).longValueExact();
    }

    public boolean isZero() {
        return amount.signum() == 0;
    }

    public boolean isNegative() {
        return amount.signum() < 0;
    }

    private Money same(Money other) {
        if (!other.currency.equals(currency)) {
            throw new IllegalArgumentException(currency.code() + " and " + other.currency.code() + " do not add up");
        }
        return other;
    }

    /** @throws IllegalArgumentException when the currencies differ */
    @Override
    public int compareTo(Money other) {
        return amount.compareTo(same(other).amount);
    }

    /** The number alone, with at least the decimals of the coin: {@code 1204.50}. */
    public String digits() {
        return amount.setScale(Math.max(currency.places(), amount.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }

    /** Such as {@code 1204.50 USD}. */
    @Override
    public String toString() {
        return digits() + " " + currency.code();
    }
}
