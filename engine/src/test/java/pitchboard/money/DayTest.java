package pitchboard.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the calendar of the Java library, which the engine cannot use. */
final class DayTest {
    @Test
    void every_day_of_two_centuries_is_one_after_the_day_before() {
        LocalDate first = LocalDate.of(1900, 1, 1);
        Day start = Day.find("1900-01-01").orElseThrow();
        for (LocalDate date = first; date.getYear() < 2101; date = date.plusDays(1)) {
            Day day = Day.find(date.toString()).orElseThrow();
            assertThat(day.daysAfter(start)).isEqualTo((int) ChronoUnit.DAYS.between(first, date));
            assertThat(day.toString()).isEqualTo(date.toString());
            assertThat(day.later(45).toString()).isEqualTo(date.plusDays(45).toString());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-02-29",
                "2100-02-29",
                "2027-13-01",
                "2027-00-10",
                "2027-04-31",
                "2027-4-1",
                "27-04-01",
                "2027/04/01",
                "today",
                "",
                "1899-12-31",
                "2027-04-0x"
            })
    void what_is_no_day_is_refused(String text) {
        assertThat(Day.find(text)).isEmpty();
    }
}
