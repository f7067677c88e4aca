package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Reckoned.Unit;

final class ReckonedTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            558.2468 | PSI | 558.2 psi
            1350.04 | PSI | 1350 psi
            12345.6 | POUND | 12346 lb
            0.97 | FACTOR | 0.97
            1.6 | MILLION_PSI | 1.6 million psi
            61.7 | PERCENT | 62 %
            14.769 | N_PER_MM2 | 14.77 N/mm²
            -3.2 | KILONEWTON | −3.2 kN
            """)
    void four_digits_are_shown_with_the_unit_of_the_document(double value, Unit unit, String shown) {
        Quantity quantity = new Reckoned(value, unit);
        assertThat(QuantityText.write(quantity, Tape.SIXTEENTHS, Tape.Style.PRINTED))
                .isEqualTo(shown);
        assertThat(QuantityText.write(quantity, Tape.MILLIMETRES, Tape.Style.PRINTED))
                .isEqualTo(shown);
    }

    @Test
    void what_differs_by_the_last_digit_of_a_machine_is_the_same() {
        assertThat(new Reckoned(1000, Unit.PSI)).isEqualByComparingTo(new Reckoned(1000.0000000001, Unit.PSI));
        assertThat(new Reckoned(1000, Unit.PSI)).isLessThan(new Reckoned(1000.001, Unit.PSI));
    }

    @Test
    void pounds_are_not_held_against_newtons_and_nothing_is_endless() {
        assertThatThrownBy(() -> new Reckoned(1, Unit.PSI).compareTo(new Reckoned(1, Unit.N_PER_MM2)))
                .hasMessageContaining("N_PER_MM2");
        assertThatThrownBy(() -> new Reckoned(Double.NaN, Unit.PSI)).isInstanceOf(IllegalArgumentException.class);
    }
}
