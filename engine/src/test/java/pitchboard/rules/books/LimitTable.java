package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import pitchboard.StairFixtures;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Pitch;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.Limit;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;

/** Verdicts that are expected of a book: rule, what is changed of a lawful stair, verdict. */
record LimitTable(String base, List<Row> rows) {
    record Row(String rule, String changes, VerdictWord expected) {}

    /** Lines that begin with # say what the clause asks, and are read by people. */
    static LimitTable of(String base, String table) {
        List<Row> rows = table.lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .map(LimitTable::row)
                .toList();
        return new LimitTable(base, rows);
    }

    private static Row row(String line) {
        String[] cells = line.split("\\|", -1);
        return new Row(cells[0].strip(), cells[1].strip(), VerdictWord.valueOf(cells[2].strip()));
    }

    Verdict verdict(Rulebook book, Row row) {
        List<Finding> findings = Checker.check(StairFixtures.stair(base + ";" + row.changes), book);
        return findings.stream()
                .filter(finding -> finding.rule().id().equals(row.rule))
                .findFirst()
                .orElseThrow(() -> new AssertionError(book.name() + " has no rule " + row.rule))
                .verdict();
    }

    /** Every rule has rows; with a limit that a stair can break, rows at it and on both sides of it. */
    void coversEveryRuleOf(Rulebook book, List<String> cannotBeBroken) {
        for (Rulebook.Entry entry : book.entries()) {
            Rule rule = entry.rule();
            List<Row> about =
                    rows.stream().filter(row -> row.rule.equals(rule.id())).toList();
            assertThat(about).as("rows about " + rule.id()).isNotEmpty();
            if (rule.limit().isPresent() && !cannotBeBroken.contains(rule.id())) {
                assertThat(sides(book, about, rule.limit().get()))
                        .as("sides of the limit of " + rule.id())
                        .containsAll(List.of(-1, 0, 1));
                assertThat(about)
                        .as("verdicts on " + rule.id())
                        .extracting(Row::expected)
                        .contains(VerdictWord.PASS, VerdictWord.FAIL);
            }
        }
    }

    private SortedSet<Integer> sides(Rulebook book, List<Row> about, Limit limit) {
        SortedSet<Integer> sides = new TreeSet<>();
        for (Row row : about) {
            findMeasured(verdict(book, row)).ifPresent(measured -> sides.add(side(measured, limit.value())));
        }
        return sides;
    }

    private static Optional<Quantity> findMeasured(Verdict verdict) {
        return verdict.match(
                pass -> Optional.of(pass.measured()),
                fail -> Optional.of(fail.measured()),
                none -> Optional.empty(),
                unknown -> Optional.empty());
    }

    static int side(Quantity measured, Quantity limit) {
        if (measured instanceof Length length) {
            return Integer.signum(length.compareTo((Length) limit));
        }
        if (measured instanceof Count count) {
            return Integer.signum(count.compareTo((Count) limit));
        }
        return measured instanceof Ratio ratio
                ? Integer.signum(ratio.compareTo((Ratio) limit))
                : Integer.signum(((Pitch) measured).compareTo((Angle) limit));
    }

    /** All rows with all books, for tests that take both. */
    Stream<Object[]> with(List<Rulebook> books) {
        List<Object[]> cases = new ArrayList<>();
        for (Rulebook book : books) {
            rows.forEach(row -> cases.add(new Object[] {book.name(), row}));
        }
        return cases.stream();
    }
}
