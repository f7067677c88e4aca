package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.StairFixtures;
import pitchboard.measure.Phrase;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.stair.Stair;

final class CheckerTest {
    private static final List<VerdictWord> WORST_FIRST =
            List.of(VerdictWord.FAIL, VerdictWord.CANNOT_TELL, VerdictWord.PASS, VerdictWord.NOT_APPLICABLE);

    private static List<Finding> check(String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book);
    }

    private static Verdict verdict(String rule, String changes, Rulebook book) {
        return check(changes, book).stream()
                .filter(finding -> finding.rule().id().equals(rule))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    @Test
    void every_rule_of_the_book_is_answered_once_and_the_worst_comes_first() {
        List<Finding> findings = check("total rise 105 in; lit ?; opening 5 in", Irc2021.rulebook());
        assertThat(findings).hasSameSizeAs(Irc2021.rulebook().entries());
        assertThat(findings)
                .extracting(finding -> WORST_FIRST.indexOf(VerdictWord.of(finding.verdict())))
                .isSortedAccordingTo(Comparator.naturalOrder());
        assertThat(findings.get(0).isFailure()).isTrue();
    }

    @Test
    void among_equals_the_order_of_the_book_is_kept() {
        List<String> fails = check("total rise 105 in; run 9 in; opening 5 in", Irc2021.rulebook()).stream()
                .filter(Finding::isFailure)
                .map(finding -> finding.rule().id())
                .toList();
        assertThat(fails)
                .containsExactly(
                        "rise-at-most",
                        "run-at-least",
                        "run-spread-at-most",
                        "nosing-at-most",
                        "nosing-spread-at-most",
                        "guard-opening-less-than");
    }

    @Test
    void a_lawful_stair_fails_nothing() {
        for (Rulebook book : List.of(Irc2018.rulebook(), Irc2021.rulebook())) {
            assertThat(check("", book)).noneMatch(Finding::isFailure);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rise known estimated | rise-at-most        | measure the rise: it is only estimated
            rise known drawing   | rise-at-most        | measure the rise: it is only read from a drawing
            rise known estimated | flight-rise-at-most | measure the rise: it is only estimated
            overhead 160 in from 20 in; overhead known drawing | headroom-at-least | measure the height of a beam: it is only read from a drawing
            """)
    void a_pass_that_rests_on_an_unsure_reading_is_no_pass(String changes, String rule, String missing) {
        assertThat(verdict(rule, changes, Irc2021.rulebook()))
                .isInstanceOfSatisfying(
                        Verdict.CannotTell.class,
                        verdict -> assertThat(verdict.missing()).isEqualTo(Phrase.of(missing)));
    }

    @Test
    void a_failure_on_an_unsure_reading_stays_a_failure() {
        assertThat(verdict("rise-at-most", "total rise 105 in; rise known estimated", Irc2021.rulebook()))
                .isInstanceOf(Verdict.Fail.class);
    }

    @Test
    void what_does_not_rest_on_the_unsure_reading_still_passes() {
        assertThat(verdict("run-at-least", "rise known estimated", Irc2021.rulebook()))
                .isInstanceOf(Verdict.Pass.class);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            free standing | a stair that stands apart from any building, porch or deck is let off R311.7 by IRC 2021 R311.7 Ex.1
            storage       | a stair to an attic nobody lives in, or to a crawl space, is let off R311.7 by IRC 2021 R311.7 Ex.2 and R311.7 Ex.3
            """)
    void exempt_uses_are_let_off_the_stair_clause_of_2021_and_told_by_which_exception(String use, String because) {
        List<Finding> findings = check("total rise 105 in; use " + use, Irc2021.rulebook());
        assertThat(findings)
                .filteredOn(finding -> finding.rule().clause().locus().startsWith("R311.7"))
                .hasSizeGreaterThan(40)
                .extracting(Finding::verdict)
                .containsOnly(new Verdict.DoesNotApply(Phrase.of(because)));
    }

    @Test
    void exempt_uses_are_not_let_off_guards_light_wood_and_loads() {
        List<String> asked = check("guard no; use free standing", Irc2021.rulebook()).stream()
                .filter(finding -> !(finding.verdict() instanceof Verdict.DoesNotApply))
                .map(finding -> finding.rule().id())
                .toList();
        assertThat(asked)
                .containsExactlyInAnyOrder(
                        "unguarded-drop-at-most",
                        "light-indoors",
                        "unswitched-risers-less-than",
                        "gypsum-below-at-least",
                        "fasteners-in-treated-wood",
                        "load-on-flight",
                        "load-on-tread",
                        "load-on-rail");
    }

    @Test
    void the_edition_of_2018_lets_nobody_off() {
        assertThat(verdict("rise-at-most", "total rise 105 in; use free standing", Irc2018.rulebook()))
                .isInstanceOf(Verdict.Fail.class);
    }

    @Test
    void the_same_stair_always_gets_the_same_findings() {
        Stair stair = StairFixtures.stair("total rise 105 in");
        assertThat(Checker.check(stair, Irc2021.rulebook())).isEqualTo(Checker.check(stair, Irc2021.rulebook()));
    }
}
