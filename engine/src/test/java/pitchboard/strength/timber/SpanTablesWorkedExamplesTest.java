package pitchboard.strength.timber;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every printed span, to the inch. Sources: the table named in each row of {@code printed-spans.csv}. Printed spans are
 * rounded to the nearest inch; two lie within five thousandths of a half, so half an inch and a hundredth is allowed.
 */
final class SpanTablesWorkedExamplesTest {
    private static final double HALF_AN_INCH = 0.51;

    static Stream<PrintedSpans.Cell> everyCell() {
        return PrintedSpans.all().stream().filter(cell -> !cell.isSuspect());
    }

    @ParameterizedTest
    @MethodSource("everyCell")
    void it_is_the_printed_span(PrintedSpans.Cell cell) {
        assertThat(cell.reckonedInches()).isCloseTo(cell.inches(), within(HALF_AN_INCH));
    }

    /** 16-10 for 16-1, and 17-11 for 17-2: both far from what every neighbour of theirs reckons to. */
    @Test
    void two_cells_of_one_reprint_are_taken_for_misprints() {
        List<PrintedSpans.Cell> suspects =
                PrintedSpans.all().stream().filter(PrintedSpans.Cell::isSuspect).toList();
        assertThat(suspects).extracting(PrintedSpans.Cell::inches).containsExactlyInAnyOrder(202, 215);
        assertThat(suspects.stream().map(PrintedSpans.Cell::reckonedInches))
                .satisfiesExactlyInAnyOrder(
                        inches -> assertThat(inches).isCloseTo(193, within(HALF_AN_INCH)),
                        inches -> assertThat(inches).isCloseTo(206, within(HALF_AN_INCH)));
    }

    @Test
    void all_of_them_were_read() {
        assertThat(PrintedSpans.all()).hasSizeGreaterThan(340);
    }
}
