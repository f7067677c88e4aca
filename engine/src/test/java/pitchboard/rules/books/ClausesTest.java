package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
import pitchboard.rules.Limit.Bound;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.surroundings.Figured;
import pitchboard.source.Clause;

/** Nothing that the documents say about a straight flight is left out, and nothing is said that they do not say. */
final class ClausesTest {
    /** What became of each line, by how the names of the books begin. */
    private static final Map<String, Map<String, String>> BECAME = Became.read();

    /** Rules that no line of the table gives: the clause is known, what it says is from memory alone. */
    private static final List<String> BESIDE_THE_TABLE = List.of("AD K 2013 private unrailed-risers-less-than");

    private static Map<String, String> tableOf(String book) {
        return BECAME.get(headingOf(book));
    }

    private static String headingOf(String book) {
        return BECAME.keySet().stream().filter(book::startsWith).findFirst().orElseThrow();
    }

    /** Something in a book that a line of a document can stand for. */
    private record Said(String name, Clause clause, Optional<Limit> limit, String figure) {}

    private static List<Said> said(Rulebook book) {
        List<Said> all = new ArrayList<>();
        for (Rulebook.Entry entry : book.entries()) {
            Rule rule = entry.rule();
            String figure = rule instanceof Figured figured ? figured.figure() : "";
            all.add(new Said(rule.id(), rule.clause(), rule.limit(), figure));
            for (Proviso proviso : rule.provisos()) {
                all.add(new Said(proviso.id(), proviso.clause(), proviso.limit(), ""));
            }
        }
        book.exemptions()
                .forEach(exemption -> exemption
                        .clauses()
                        .forEach(clause -> all.add(new Said("exemption", clause, Optional.empty(), ""))));
        return all;
    }

    static Stream<ClauseRow> everyRow() {
        return ClauseRow.all().stream();
    }

    @ParameterizedTest
    @MethodSource("everyRow")
    void every_line_is_a_rule_with_its_clause_value_and_confidence_or_has_a_reason(ClauseRow row) {
        String meant = tableOf(row.book()).get(row.key());
        assertThat(meant).as("what became of " + row.key()).isNotNull();
        if (meant.startsWith("(")) {
            return;
        }
        Rulebook book = Books.findByName(row.book()).orElseThrow();
        for (String name : meant.replace("not ", "").split(", *", -1)) {
            assertThat(said(book))
                    .as(name)
                    .anySatisfy(said -> assertSaysTheSame(said, name, row, meant.startsWith("not ")));
        }
    }

    private static void assertSaysTheSame(Said said, String name, ClauseRow row, boolean inverse) {
        boolean words = name.startsWith("~");
        assertThat(said.name()).isEqualTo(words ? name.substring(1) : name);
        assertThat(said.clause().locus()).isEqualTo(row.clause());
        assertThat(said.clause().confidence()).isEqualTo(row.confidence());
        assertThat(row.book()).startsWith(said.clause().edition().shortName());
        if (words || !row.isNumber()) {
            return;
        }
        if (said.figure().isEmpty()) {
            Limit limit = said.limit().orElseThrow(() -> new AssertionError(name + " has no limit"));
            assertSameValue(limit.value(), row.number(limit.bound().isFromBelow()), row.unit());
            assertSameSide(limit.bound(), row.comparator(), inverse);
        } else {
            assertThat(said.figure()).startsWith(row.value() + " " + row.unit());
        }
    }

    private static void assertSameValue(Quantity value, String number, String unit) {
        BigDecimal printed = new BigDecimal(number);
        Ratio exact = Ratio.of(printed.unscaledValue(), BigInteger.TEN.pow(Math.max(0, printed.scale())));
        Quantity expected = switch (unit) {
            case "in" -> Length.inches(exact);
            case "mm" -> Length.mm(exact);
            case "deg" -> new Angle(exact);
            case "count" -> new Count(printed.intValueExact());
            case "percent" -> exact.times(Ratio.of(1, 100));
            case "sq in" -> new Area(exact);
            case "ratio" -> nearly(value, exact);
            default -> throw new AssertionError("no quantity has the unit " + unit);
        };
        assertThat(value).isEqualTo(expected);
    }

    /** Slopes are printed as decimals of seven places at most. */
    private static Quantity nearly(Quantity value, Ratio printed) {
        Ratio away = ((Ratio) value).minus(printed).abs();
        return away.compareTo(Ratio.of(1, 10_000_000)) <= 0 ? value : printed;
    }

    private static void assertSameSide(Bound bound, String comparator, boolean inverse) {
        switch (comparator) {
            case ">=" -> assertThat(bound).isEqualTo(inverse ? Bound.LESS_THAN : Bound.AT_LEAST);
            case "<=" -> assertThat(bound).isEqualTo(inverse ? Bound.MORE_THAN : Bound.AT_MOST);
            case ">" -> assertThat(bound).isEqualTo(inverse ? Bound.AT_MOST : Bound.MORE_THAN);
            case "<" -> assertThat(bound).isEqualTo(inverse ? Bound.AT_LEAST : Bound.LESS_THAN);
            default -> assertThat(comparator).isEqualTo("=");
        }
    }

    @Test
    void the_table_has_no_line_that_no_document_has() {
        BECAME.forEach((heading, table) ->
                assertThat(keysOf(heading)).as(heading).containsExactlyInAnyOrderElementsOf(table.keySet()));
    }

    private static List<String> keysOf(String heading) {
        return ClauseRow.all().stream()
                .filter(row -> headingOf(row.book()).equals(heading))
                .map(ClauseRow::key)
                .distinct()
                .toList();
    }

    @Test
    void no_book_says_what_its_document_does_not() {
        for (Rulebook book : Books.all()) {
            List<String> lines = ClauseRow.all().stream()
                    .filter(row -> row.book().equals(book.name()))
                    .flatMap(row -> Stream.of(tableOf(book.name())
                                    .get(row.key())
                                    .replace("not ", "")
                                    .replace("~", "")
                                    .split(", *", -1))
                            .map(name -> name + " " + row.clause()))
                    .toList();
            assertThat(said(book))
                    .filteredOn(said -> !BESIDE_THE_TABLE.contains(book.name() + " " + said.name()))
                    .allSatisfy(said -> assertThat(lines)
                            .contains(said.name() + " " + said.clause().locus()));
        }
    }

    @Test
    void only_england_has_a_rule_beside_the_table() {
        assertThat(Books.all())
                .flatExtracting(book -> said(book).stream()
                        .map(said -> book.name() + " " + said.name())
                        .filter(BESIDE_THE_TABLE::contains)
                        .toList())
                .containsExactlyElementsOf(BESIDE_THE_TABLE);
    }
}
