package pitchboard.intake.rates;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.measure.Decimals;
import pitchboard.measure.Ratio;

/** Shares, hours and contents, as they are typed. */
final class Numbers {
    private static final int MOST_DIGITS = 6;
    private static final int MOST_PLACES = 4;

    private Numbers() {}

    /** Such as {@code 7.25 %}, from nothing to the most. */
    static Form<Ratio> share(int mostPerCent, String example) {
        return Forms.parsed(
                text -> text.endsWith("%")
                        ? find(text.substring(0, text.length() - 1).strip())
                                .map(number -> number.dividedBy(Ratio.of(100)))
                                .filter(share -> share.compareTo(Ratio.of(mostPerCent, 100)) <= 0)
                        : Optional.empty(),
                share -> Decimals.trimmed(share.times(100), MOST_PLACES) + " %",
                "a share from 0 % to " + mostPerCent + " %, such as " + example,
                example);
    }

    /** A decimal number above nothing. */
    static Form<Ratio> above(String what, String example) {
        return Forms.parsed(
                text -> find(text).filter(number -> number.signum() > 0),
                number -> Decimals.trimmed(number, MOST_PLACES),
                what + " above 0, such as " + example,
                example);
    }

    /** A decimal number, nothing included. */
    static Form<Ratio> from0(String what, String example) {
        return Forms.parsed(
                Numbers::find,
                number -> Decimals.trimmed(number, MOST_PLACES),
                what + " from 0 up, such as " + example,
                example);
    }

    private static Optional<Ratio> find(String text) {
        String[] parts = text.split("\\.", -1);
        boolean isNumber = parts.length <= 2
                && isDigits(parts[0], MOST_DIGITS)
                && (parts.length == 1 || isDigits(parts[1], MOST_PLACES));
        if (!isNumber) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(text);
        return Optional.of(
                Ratio.of(number.movePointRight(MOST_PLACES).toBigIntegerExact(), BigInteger.TEN.pow(MOST_PLACES)));
    }

    private static boolean isDigits(String text, int most) {
        return !text.isEmpty() && text.length() <= most && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }
}
