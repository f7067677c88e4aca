package pitchboard.intake.yard;

import java.math.BigDecimal;
import java.util.Optional;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/** Amounts, currencies and days, as they are typed. */
public final class MoneyForms {
    private static final int MOST_DIGITS = 7;
    private static final int MOST_PLACES = 4;

    private MoneyForms() {}

    /** Of one currency: an amount in another is refused. More than zero: what costs nothing is no price. */
    public static Form<Money> amount(Currency currency) {
        return Forms.parsed(
                text -> find(text, currency),
                Money::digits,
                "an amount in " + currency.code() + ", more than 0 and without a sign, such as 12.40",
                "12.40");
    }

    private static Optional<Money> find(String text, Currency currency) {
        String number = text.endsWith(" " + currency.code())
                ? text.substring(0, text.length() - currency.code().length() - 1)
                : text;
        return isNumber(number)
                ? Optional.of(new Money(new BigDecimal(number), currency)).filter(money -> !money.isZero())
                : Optional.empty();
    }

    private static boolean isNumber(String text) {
        String[] parts = text.split("\\.", -1);
        return parts.length <= 2
                && isDigits(parts[0], MOST_DIGITS)
                && (parts.length == 1 || isDigits(parts[1], MOST_PLACES));
    }

    private static boolean isDigits(String text, int most) {
        return !text.isEmpty() && text.length() <= most && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    /** A code of three capitals; its coin is the hundredth. */
    public static Form<Currency> currency() {
        return Forms.parsed(
                text -> Currency.isCode(text) ? Optional.of(new Currency(text, 2)) : Optional.empty(),
                Currency::code,
                "three capitals such as USD",
                "USD");
    }

    public static Form<Day> day() {
        return Forms.parsed(
                Day::find, Day::toString, "a day written as year-month-day, such as 2027-05-03", "2027-05-03");
    }
}
