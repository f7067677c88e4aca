package pitchboard.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Ratio;

final class MoneyTest {
    private static final Currency USD = new Currency("USD", 2);

    private static Money usd(String amount) {
        return new Money(new BigDecimal(amount), USD);
    }

    @Test
    void nothing_is_lost_until_it_is_rounded_to_the_coin() {
        Money foot = usd("0.8725");
        assertThat(foot.times(3)).isEqualTo(usd("2.6175"));
        assertThat(foot.times(3).toCoin()).isEqualTo(usd("2.62"));
        assertThat(foot.toString()).isEqualTo("0.8725 USD");
        assertThat(usd("12.4").toString()).isEqualTo("12.40 USD");
    }

    /** Half a coin goes away from zero. */
    @ParameterizedTest
    @CsvSource({"0.005, 0.01", "0.0049, 0", "-0.005, -0.01", "2.675, 2.68", "2.665, 2.67"})
    void half_a_coin_goes_up(String exact, String rounded) {
        assertThat(usd(exact).toCoin()).isEqualTo(usd(rounded));
    }

    @Test
    void a_share_is_rounded_once() {
        assertThat(usd("100").times(Ratio.of(1, 3))).isEqualTo(usd("33.33"));
        assertThat(usd("100").times(Ratio.of(2, 3))).isEqualTo(usd("66.67"));
    }

    @Test
    void coins_are_whole() {
        assertThat(usd("41.95").coins()).isEqualTo(4195);
        assertThat(Money.ofCoins(4195, USD)).isEqualTo(usd("41.95"));
        assertThatThrownBy(() -> usd("0.005").coins()).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void currencies_do_not_mix() {
        Money euro = new Money(BigDecimal.ONE, new Currency("EUR", 2));
        assertThatThrownBy(() -> usd("1").plus(euro))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("USD and EUR do not add up");
    }
}
