package pitchboard.carry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.measure.Reckoned;
import pitchboard.rules.books.Books;

final class BookLoadsTest {
    /** As the books say in their rules about loads; a dash where they name none. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # IRC Table R301.5; IBC Table 1607.1; NBC 9.8.9.1; 29 CFR 1910.25(b)(6)
            IRC 2018, 40 PSF, 300 POUND
            IRC 2021, 40 PSF, 300 POUND
            IRC 2024, 40 PSF, 300 POUND
            IBC 2021, 100 PSF, 300 POUND
            OSHA 1910, -, 1000 POUND
            OSHA 1926, -, -
            'no code, guidance only', -, -
            """)
    void the_loads_of_a_book_are_read_from_its_rules(String book, String live, String point) {
        BookLoads loads = new BookLoads(Books.findByName(book).orElseThrow());
        assertThat(loads.findLive().map(named -> text(named.load())).orElse("-"))
                .isEqualTo(live);
        assertThat(loads.findPoint().map(named -> text(named.load())).orElse("-"))
                .isEqualTo(point);
    }

    private static String text(Reckoned load) {
        return (int) load.value() + " " + load.unit();
    }

    /** A book that names a load in words nobody reads would be passed over in silence. */
    @ParameterizedTest
    @CsvSource({"load-on-flight", "load-on-tread"})
    void no_load_of_any_book_is_passed_over(String id) {
        assertThat(Books.all())
                .filteredOn(book -> book.entries().stream()
                        .anyMatch(entry -> entry.rule().id().equals(id)))
                .isNotEmpty()
                .allSatisfy(book -> {
                    BookLoads loads = new BookLoads(book);
                    assertThat(loads.findLive().isPresent() || loads.findPoint().isPresent())
                            .as(book.name())
                            .isTrue();
                });
    }
}
