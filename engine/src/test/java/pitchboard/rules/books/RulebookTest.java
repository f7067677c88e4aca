package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.rules.books.america.Irc2024;
import pitchboard.rules.books.europe.ApprovedDocumentK2013;
import pitchboard.rules.books.pacific.As1657;
import pitchboard.rules.kinds.Advised;
import pitchboard.rules.kinds.grips.FingerRecess;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Confidence;

/** The set of rules is whole: every kind has its page, every rule its own name, clause and words. */
final class RulebookTest {
    private static final Path PAGES = Path.of("..", "docs", "rules");
    private static final Path INDEX = PAGES.resolve("README.md");
    private static final Path KINDS = Path.of("src", "main", "java", "pitchboard", "rules", "kinds");

    static Stream<Rulebook> everyBook() {
        return Books.all().stream();
    }

    private static Stream<Rule> everyRule() {
        return everyBook()
                .flatMap(book -> book.entries().stream())
                .map(Rulebook.Entry::rule)
                .map(rule -> rule instanceof Advised advised ? advised.rule() : rule);
    }

    private static SortedSet<String> everyId() {
        return everyRule().map(Rule::id).collect(TreeSet::new, TreeSet::add, TreeSet::addAll);
    }

    @ParameterizedTest
    @MethodSource("everyBook")
    void a_rule_is_found_by_its_id_and_clause(Rulebook book) {
        assertThat(book.entries())
                .extracting(
                        entry -> entry.rule().id() + " " + entry.rule().clause().locus())
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("everyBook")
    void a_proviso_means_the_same_wherever_it_stands_and_is_not_called_like_a_rule(Rulebook book) {
        List<Proviso> provisos = book.entries().stream()
                .flatMap(entry -> entry.rule().provisos().stream())
                .distinct()
                .toList();
        assertThat(provisos).extracting(Proviso::id).doesNotHaveDuplicates().doesNotContainAnyElementsOf(everyId());
    }

    @ParameterizedTest
    @MethodSource("everyBook")
    void every_rule_cites_a_clause_of_its_own_edition_and_says_what_it_judges(Rulebook book) {
        assertThat(book.entries()).isNotEmpty().allSatisfy(entry -> {
            assertThat(entry.rule().clause().edition()).isEqualTo(book.edition());
            assertThat(entry.rule().clause().locus()).isNotBlank();
            assertThat(entry.rule().subject()).isNotBlank().doesNotContain(".", ":");
            assertThat(entry.changes()).isEmpty();
        });
    }

    @Test
    void a_kind_is_called_like_its_class() {
        assertThat(everyRule())
                .filteredOn(rule -> !(rule instanceof ToLookAt) && !(rule instanceof FingerRecess))
                .allSatisfy(rule ->
                        assertThat(rule.id()).endsWith(kebab(rule.getClass().getSimpleName())));
    }

    private static String kebab(String name) {
        return name.replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }

    /** A kind that no book uses is either a leftover or missing from a book. */
    @Test
    void every_kind_is_used_by_a_book() throws IOException {
        List<String> used = new ArrayList<>(List.of("Advised"));
        used.addAll(everyRule().map(rule -> rule.getClass().getSimpleName()).toList());
        try (Stream<Path> files = Files.walk(KINDS)) {
            assertThat(files.filter(file -> file.toString().endsWith(".java"))
                            .filter(RulebookTest::isKind)
                            .map(file -> file.getFileName().toString().replace(".java", "")))
                    .hasSizeGreaterThan(50)
                    .isSubsetOf(used);
        }
        assertThat(Matter.values()).extracting(Matter::id).isSubsetOf(everyId());
    }

    private static boolean isKind(Path file) {
        try {
            return Files.readString(file).matches("(?s).*public record \\w+\\([^)]*\\)\\s+implements .*");
        } catch (IOException e) {
            throw new AssertionError(file.toString(), e);
        }
    }

    static Stream<String> everyKind() {
        return everyId().stream();
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void every_kind_has_its_page_with_all_its_parts(String id) throws IOException {
        Path page = PAGES.resolve(id + ".md");
        assertThat(page).as("write " + page).exists();
        assertThat(Files.readString(page))
                .startsWith("# ")
                .containsSubsequence(
                        "?\n\n`" + id + "`\n",
                        "\n**Says.** ",
                        "\n**Why.** ",
                        "\n**How it is measured.** ",
                        "\n**Passes.** ",
                        "\n**Fails.** ",
                        "](README.md)\n");
    }

    @Test
    void no_page_is_about_a_kind_that_is_not_there() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".md", ""))
                            .filter(name -> !name.equals("README")))
                    .containsExactlyInAnyOrderElementsOf(everyId());
        }
    }

    @Test
    void the_index_is_the_one_that_the_books_give() throws IOException {
        if (Boolean.getBoolean("pitchboard.write")) {
            Files.writeString(INDEX, RuleIndex.page());
        }
        assertThat(INDEX).as("write " + INDEX + " with -Dpitchboard.write=true").exists();
        assertThat(Files.readString(INDEX)).isEqualTo(RuleIndex.page());
    }

    @Test
    void a_book_is_found_by_its_name_and_by_no_other() {
        assertThat(Books.findByName("IRC 2021")).contains(Irc2021.rulebook());
        assertThat(Books.findByName(" irc 2018 ")).contains(Irc2018.rulebook());
        assertThat(Books.findByName("AD K 2013 private")).contains(ApprovedDocumentK2013.rulebook());
        assertThat(Books.findByName("as 1657:2018")).contains(As1657.rulebook());
        assertThat(Books.findByName("IRC")).isEmpty();
        assertThat(Books.all()).extracting(Rulebook::name).doesNotHaveDuplicates();
    }

    /** What the newer edition says otherwise than the older one, beside how its numbers were come by. */
    @Test
    void the_editions_of_2018_and_2021_differ_only_where_the_documents_do() {
        assertThat(said(Irc2021.rulebook()))
                .containsAll(said(Irc2018.rulebook()))
                .filteredOn(line -> !said(Irc2018.rulebook()).contains(line))
                .containsExactly("load-along-guard Table R301.5 note d Optional.empty");
        assertThat(Irc2018.rulebook().exemptions()).isEmpty();
        assertThat(Irc2021.rulebook().exemptions()).hasSize(2);
    }

    /** Chapter 3 was put in a new order in 2024; what it says is the same, all of it from memory. */
    @Test
    void the_edition_of_2024_says_what_2021_says_under_other_numbers() {
        assertThat(withoutClauses(Irc2024.rulebook())).isEqualTo(withoutClauses(Irc2021.rulebook()));
        assertThat(said(Irc2024.rulebook()))
                .noneMatch(line -> line.matches(".* R3(11|12|03|17)\\..*"))
                .filteredOn(line -> line.contains(" R318.7"))
                .hasSizeGreaterThan(40);
        assertThat(Irc2024.rulebook().entries())
                .extracting(entry -> entry.rule().clause().confidence())
                .containsOnly(Confidence.FROM_MEMORY);
    }

    private static List<String> withoutClauses(Rulebook book) {
        return book.entries().stream()
                .map(Rulebook.Entry::rule)
                .map(rule -> rule.id() + " " + rule.limit())
                .toList();
    }

    private static List<String> said(Rulebook book) {
        return book.entries().stream()
                .map(Rulebook.Entry::rule)
                .map(rule -> rule.id() + " " + rule.clause().locus() + " " + rule.limit())
                .toList();
    }
}
