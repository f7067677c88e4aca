package pitchboard.rules.books;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pitchboard.measure.Tape;
import pitchboard.rules.FindingText;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.surroundings.Figured;
import pitchboard.source.Clause;
import pitchboard.source.Confidence;

/** The list of rules as docs/rules/README.md has it. */
final class RuleIndex {
    private static final String HEAD = """
            # Which rules are there, and what does each book say?

            Written by `RulebookTest`; `mvn -o -q -pl engine test -Dtest=RulebookTest -Dpitchboard.write=true` writes it anew.

            A book is one edition of one document. This program judges by it and does not replace it: the code as adopted where
            the stair stands decides, and the official who reads it. Documents are paraphrased, never quoted.
            A number with * was read in another edition or in a text that adopts one, a number with † is from memory: check both
            before relying on them.

            """;

    /** Which books stand beside each other, by how their names begin. */
    private static final Map<String, List<String>> SHELVES = shelves();

    private static final List<String> IN_INCHES = List.of("IRC", "IBC", "OSHA", "ADA", "no code");

    private static Map<String, List<String>> shelves() {
        Map<String, List<String>> shelves = new LinkedHashMap<>();
        shelves.put(
                "Houses in America, and where no code applies", List.of("IRC", "IBC 2021 dwelling", "NBC", "no code"));
        shelves.put("Other buildings and work in America", List.of("IBC 2021", "OSHA", "ADA"));
        shelves.put("Europe", List.of("AD K", "DIN", "EN ISO"));
        shelves.put("Australia and New Zealand", List.of("NCC", "AS 1657", "NZ"));
        return shelves;
    }

    private final StringBuilder page = new StringBuilder(HEAD);
    private final List<Rulebook> books = Books.all();

    private RuleIndex() {}

    static String page() {
        return new RuleIndex().write();
    }

    private String write() {
        books();
        rules();
        provisos();
        return page.toString();
    }

    private void books() {
        page.append("## Books\n\n| Name | Document | About | Rules |\n|---|---|---|---|\n");
        for (Rulebook book : books) {
            String document = book.edition().work() + ", " + book.edition().year();
            row(
                    book.name(),
                    document,
                    book.scope(),
                    Integer.toString(book.entries().size()));
        }
    }

    private void rules() {
        page.append(
                "\n## Rules\n\nIn four tables, since the books are many; a rule stands in each whose books have it.\n");
        SHELVES.forEach((title, names) ->
                shelf(title, books.stream().filter(book -> isOn(names, book)).toList()));
    }

    private static boolean isOn(List<String> names, Rulebook book) {
        return names.stream().anyMatch(book.name()::startsWith);
    }

    private void shelf(String title, List<Rulebook> shelf) {
        page.append("\n### ").append(title).append("\n\n| Rule | What is judged |");
        shelf.forEach(book -> page.append(' ').append(book.name()).append(" |"));
        page.append("\n|---|---|").append("---|".repeat(shelf.size())).append('\n');
        Map<String, Rule> kinds = new TreeMap<>();
        shelf.forEach(book ->
                book.entries().forEach(entry -> kinds.putIfAbsent(entry.rule().id(), entry.rule())));
        kinds.forEach((id, rule) -> {
            page.append("| [")
                    .append(id)
                    .append("](")
                    .append(id)
                    .append(".md) | ")
                    .append(rule.subject());
            shelf.forEach(book -> page.append(" | ").append(saying(book, id)));
            page.append(" |\n");
        });
    }

    private static String saying(Rulebook book, String id) {
        return book.entries().stream()
                .map(Rulebook.Entry::rule)
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .map(rule -> number(book, rule) + cited(rule.clause()))
                .orElse("–");
    }

    private static String number(Rulebook book, Rule rule) {
        if (rule instanceof Figured figured && !figured.figure().isEmpty()) {
            return figured.figure() + ", ";
        }
        return bound(book, rule.limit());
    }

    private void provisos() {
        page.append(
                "\n## Provisos\n\nWhat rules depend on. A local change can move their numbers like the limits above.\n\n");
        page.append("| Proviso | What it is | Book | Number and clause | Rules |\n|---|---|---|---|---|\n");
        for (Rulebook book : books) {
            Map<Proviso, String> found = new LinkedHashMap<>();
            book.entries()
                    .forEach(entry -> entry.rule()
                            .provisos()
                            .forEach(proviso ->
                                    found.merge(proviso, entry.rule().id(), (rules, rule) -> rules + ", " + rule)));
            found.forEach((proviso, rules) -> row(
                    "`" + proviso.id() + "`",
                    proviso.words(),
                    book.name(),
                    bound(book, proviso.limit()) + cited(proviso.clause()),
                    rules));
        }
    }

    private void row(String... cells) {
        page.append("| ").append(String.join(" | ", cells)).append(" |\n");
    }

    private static String bound(Rulebook book, Optional<Limit> limit) {
        Tape tape = isOn(IN_INCHES, book) ? Tape.SIXTEENTHS : Tape.MILLIMETRES;
        FindingText text = FindingText.on(tape, Tape.Style.PLAIN);
        return limit.map(each -> text.bound(each) + ", ").orElse("");
    }

    private static String cited(Clause clause) {
        Confidence confidence = clause.confidence();
        String mark = confidence == Confidence.FROM_MEMORY ? " †" : "";
        return clause.locus() + (confidence == Confidence.READ_ELSEWHERE ? " *" : mark);
    }
}
