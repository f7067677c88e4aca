package pitchboard.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pitchboard.measure.Tape.Style;

final class QuantityTextTest {
    private static final Pitch PITCH = Pitch.of(Length.inches(7), Length.inches(10));

    @Test
    void every_kind_of_quantity_has_its_unit() {
        assertThat(inches(Length.inches(105, 3, 4))).isEqualTo("8'-9 3/4\"");
        assertThat(inches(Ratio.of(2, 3))).isEqualTo("0.667");
        assertThat(inches(PITCH)).isEqualTo("35 deg");
        assertThat(inches(Pitch.of(Length.inches(3), Length.inches(4)))).isEqualTo("36.9 deg");
        assertThat(inches(Angle.degrees(42))).isEqualTo("42 deg");
        assertThat(inches(Area.of(Length.inches(7, 1, 4), Length.inches(10, 1, 2))))
                .isEqualTo("76.13 sq in");
        assertThat(inches(new Count(13))).isEqualTo("13");
    }

    @Test
    void a_metric_tape_shows_metric_units() {
        assertThat(QuantityText.write(Length.mm(2686), Tape.MILLIMETRES, Style.PRINTED))
                .isEqualTo("2686 mm");
        Area area = Area.of(Length.mm(180), Length.mm(270));
        assertThat(QuantityText.write(area, Tape.MILLIMETRES, Style.PRINTED)).isEqualTo("48600 mm²");
        assertThat(QuantityText.write(area, Tape.MILLIMETRES, Style.PLAIN)).isEqualTo("48600 sq mm");
    }

    @Test
    void printed_numbers_have_printed_signs() {
        assertThat(QuantityText.write(Ratio.of(-1, 2), Tape.SIXTEENTHS, Style.PRINTED))
                .isEqualTo("−0.5");
        assertThat(QuantityText.write(PITCH, Tape.SIXTEENTHS, Style.PRINTED)).isEqualTo("35°");
        assertThat(QuantityText.write(Length.inches(0, -3, 8), Tape.SIXTEENTHS, Style.PRINTED))
                .isEqualTo("−3⁄8″");
    }

    private static String inches(Quantity quantity) {
        return QuantityText.write(quantity, Tape.SIXTEENTHS, Style.PLAIN);
    }
}
