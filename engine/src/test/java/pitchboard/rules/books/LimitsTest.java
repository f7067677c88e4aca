package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.LimitTable.Row;

/**
 * Verdicts at and on either side of every limit of the books whose tables stand in {@code limits}, one file for each. The
 * numbers are those of the clauses named above the rows. The other books have a test class each.
 */
final class LimitsTest {
    private static final Path TABLES = Path.of("src", "test", "resources", "pitchboard", "rules", "books", "limits");
    private static final List<String> ELSEWHERE =
            List.of("IRC 2018", "IRC 2021", "IRC 2024", "AD K 2013 private", "no code, guidance only");

    /** The table of one book, and the rules that cannot be met just, or not be broken by any design. */
    record BookTable(Rulebook book, LimitTable table, List<String> notBothSides) {
        static BookTable read(Path file) {
            try {
                String text = Files.readString(file);
                LimitTable table = LimitTable.of(entry(text, "base"), text.substring(text.indexOf("\n\n")));
                List<String> notBothSides =
                        List.of(entry(text, "not both sides").split(", ", -1));
                return new BookTable(Books.findByName(entry(text, "book")).orElseThrow(), table, notBothSides);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static String entry(String text, String name) {
            return text.lines()
                    .filter(line -> line.startsWith(name + ": "))
                    .map(line -> line.substring(name.length() + 2))
                    .findFirst()
                    .orElseThrow();
        }

        @Override
        public String toString() {
            return book.name();
        }
    }

    static Stream<BookTable> everyTable() throws IOException {
        try (Stream<Path> files = Files.list(TABLES)) {
            return files.sorted().map(BookTable::read).toList().stream();
        }
    }

    static Stream<Object[]> everyRow() throws IOException {
        return everyTable().flatMap(each -> each.table().rows().stream().map(row -> new Object[] {each, row}));
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void every_limit_is_judged_at_it_and_on_either_side(BookTable each, Row row) {
        assertThat(VerdictWord.of(each.table().verdict(each.book(), row))).isEqualTo(row.expected());
    }

    @ParameterizedTest
    @MethodSource("everyTable")
    void the_table_leaves_out_no_rule_and_no_side_of_a_limit(BookTable each) {
        each.table().coversEveryRuleOf(each.book(), each.notBothSides());
    }

    @Test
    void every_book_has_its_table_here_or_in_a_class_of_its_own() throws IOException {
        List<String> here = everyTable().map(BookTable::toString).toList();
        assertThat(Books.all())
                .extracting(Rulebook::name)
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(here.stream(), ELSEWHERE.stream()).toList());
    }
}
