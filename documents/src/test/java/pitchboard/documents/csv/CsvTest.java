package pitchboard.documents.csv;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CsvTest {
    @ParameterizedTest
    @ValueSource(
            strings = {"0", "12", "-3.5", "1.50", "0.438", "100.00", "2027-05-14", "2x12", "3'-8 1/2\"", "10 in", "None"
            })
    void numbers_days_and_plain_text_stay_as_they_are(String cell) {
        assertThat(Csv.kept(cell)).isEqualTo(cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-x", "@sum", "-", "+49 555"})
    void what_looks_like_a_formula_gets_a_blank(String cell) {
        assertThat(Csv.kept(cell)).isEqualTo(" " + cell);
    }

    @Test
    void a_fraction_gets_the_fraction_stroke() {
        assertThat(Csv.kept("3/4")).isEqualTo("3\u20444");
        assertThat(Csv.kept("1 1/2")).isEqualTo("1 1\u20442");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0123",
                "1E5",
                "1e3",
                "1-2",
                "1/2/27",
                "12:30",
                "5 %",
                "1,234",
                "$5",
                "(5)",
                "1.2.3",
                "10 am",
                "May 5",
                "Mar-4",
                "14 May 2027",
                "4. May",
                "TRUE",
                "1234567890123456"
            })
    void what_looks_like_another_number_or_a_date_is_kept_from_becoming_one(String cell) {
        assertThat(Csv.kept(cell)).isEqualTo("\u2060" + cell);
    }

    @Test
    void rows_are_quoted_as_rfc_4180_has_it_and_marked_as_utf_8() {
        assertThat(new Csv()
                        .row("a,b", "say \"so\"", "two\nlines", "caf\u00e9", "")
                        .text())
                .isEqualTo("\ufeff\"a,b\",\"say \"\"so\"\"\",\"two\nlines\",caf\u00e9,\r\n");
    }
}
