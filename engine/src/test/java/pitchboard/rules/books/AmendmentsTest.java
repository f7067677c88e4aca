package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.StairFixtures;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.rules.Amended;
import pitchboard.rules.Amendment;
import pitchboard.rules.Change;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Limit;
import pitchboard.rules.Rulebook;
import pitchboard.rules.RulebookGate;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.stair.Stair;

final class AmendmentsTest {
    /** The rule of 8 1/4 by 9 that several states keep: Act 13 of 2004, 34 Pa. Code 403.21. */
    private static final Amendment RISE = change("rise-at-most", Read.inches("8 1/4 in"));

    private static final Amendment RUN = change("run-at-least", Read.inches("9 in"));
    private static final String EIGHT_AND_A_QUARTER_BY_NINE =
            "total rise 99 in; risers 12; run 9 in; treads 10 1/4 in; overhang 2 in";

    private static Amendment change(String rule, Quantity limit) {
        return new Amendment(rule, Optional.empty(), Optional.of(limit), "34 Pa. Code 403.21", "2004", "local rule");
    }

    private static Amendment lift(String rule) {
        return new Amendment(rule, Optional.empty(), Optional.empty(), "the town's inspector", "", "");
    }

    private static Finding finding(String rule, String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book).stream()
                .filter(each -> each.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_local_change_passes_what_the_book_fails() {
        Amended amended = Irc2021.rulebook().amended(List.of(RISE, RUN));
        assertThat(amended.problems()).isEmpty();
        for (String rule : List.of("rise-at-most", "run-at-least")) {
            assertThat(finding(rule, EIGHT_AND_A_QUARTER_BY_NINE, Irc2021.rulebook())
                            .isFailure())
                    .isTrue();
            assertThat(finding(rule, EIGHT_AND_A_QUARTER_BY_NINE, amended.book())
                            .verdict())
                    .isInstanceOf(Verdict.Pass.class);
        }
    }

    @Test
    void a_local_change_moves_the_limit_and_nothing_else() {
        Rulebook book = Irc2021.rulebook().amended(List.of(RISE)).book();
        assertThat(finding("rise-at-most", "total rise 99 in", book).verdict()).isInstanceOf(Verdict.Pass.class);
        assertThat(finding("rise-at-most", "total rise 99 1/64 in", book).isFailure())
                .isTrue();
        assertThat(finding("run-at-least", "run 9 in", book).isFailure()).isTrue();
        assertThat(Irc2021.rulebook().amendments()).isEmpty();
        assertThat(book.amendments()).containsExactly(RISE);
    }

    @Test
    void the_finding_keeps_who_says_so_and_what_the_book_has() {
        Rulebook book = Irc2021.rulebook().amended(List.of(RISE)).book();
        Finding finding = finding("rise-at-most", "total rise 99 in", book);
        assertThat(finding.changes())
                .containsExactly(new Change(RISE, "rise of a step", Optional.of(Limit.atMost(Length.inches(7, 3, 4)))));
        assertThat(FindingText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN).line(finding))
                .isEqualTo(
                        "rise of a step: 8 1/4\", at most 8 1/4\" [IRC 2021 R311.7.5.1; changed by"
                                + " 34 Pa. Code 403.21 since 2004 (local rule), the book has at most 7 3/4\" for rise of a step]");
    }

    @Test
    void a_rule_can_be_lifted_and_says_who_lifted_it() {
        Rulebook book = Irc2021.rulebook()
                .amended(List.of(lift("top-landing-depth-at-least")))
                .book();
        Finding finding = finding("top-landing-depth-at-least", "top door over; top depth 20 in", book);
        assertThat(FindingText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN).line(finding))
                .isEqualTo(
                        "depth of the top landing: does not apply: it is not enforced here, says the town's inspector"
                                + " [IRC 2021 R311.7.6; lifted by the town's inspector, the book has at least 36\" for depth of"
                                + " the top landing]");
    }

    @Test
    void a_lifted_rule_and_a_moved_limit_count_when_a_stair_is_chosen() {
        Stair stair = StairFixtures.stair(EIGHT_AND_A_QUARTER_BY_NINE);
        Rulebook moved = Irc2021.rulebook().amended(List.of(RISE, RUN)).book();
        Rulebook lifted = Irc2021.rulebook()
                .amended(List.of(lift("rise-at-most"), lift("run-at-least")))
                .book();
        assertThat(new RulebookGate(Irc2021.rulebook()).objections(stair)).hasSize(2);
        assertThat(new RulebookGate(moved).objections(stair)).isEmpty();
        assertThat(new RulebookGate(lifted).objections(stair)).isEmpty();
    }

    @Test
    void a_proviso_can_be_moved_too() {
        Amendment waiver = change("nosing-waiver-run", Length.inches(10));
        Amended amended = Irc2021.rulebook().amended(List.of(waiver));
        assertThat(amended.problems()).isEmpty();
        assertThat(finding("nosing-at-least", "treads 10 in", Irc2021.rulebook())
                        .isFailure())
                .isTrue();
        assertThat(finding("nosing-at-least", "treads 10 in", amended.book()).verdict())
                .isInstanceOf(Verdict.DoesNotApply.class);
        assertThat(finding("floor-nosing-at-least", "overhang 1 in", amended.book())
                        .verdict())
                .isInstanceOf(Verdict.DoesNotApply.class);
    }

    @Test
    void rule_and_proviso_can_both_be_moved_and_both_are_told() {
        Amended amended = Irc2021.rulebook()
                .amended(List.of(
                        change("nosing-waiver-run", Length.inches(12)), change("nosing-at-least", Length.inches(1))));
        assertThat(amended.problems()).isEmpty();
        assertThat(finding("nosing-at-least", "", amended.book()).changes())
                .extracting(Change::what)
                .containsExactly("run from which no nosing is owed", "nosing of a tread");
    }

    @Test
    void every_limit_of_every_book_can_be_moved_to_another_of_its_kind() {
        for (Rulebook book : Books.all()) {
            for (Rulebook.Entry entry : book.entries()) {
                entry.rule().limit().ifPresent(limit -> {
                    Quantity other = another(limit.value());
                    Amended amended = book.amended(List.of(change(entry.rule().id(), other)));
                    assertThat(amended.problems()).isEmpty();
                    assertThat(amended.book().entries())
                            .filteredOn(each -> !each.changes().isEmpty())
                            .singleElement()
                            .satisfies(each -> assertThat(each.rule().limit()).contains(limit.with(other)));
                });
            }
        }
    }

    private static Quantity another(Quantity value) {
        if (value instanceof Length length) {
            return length.plus(Length.inches(1));
        }
        if (value instanceof Count count) {
            return new Count(count.value() + 1);
        }
        if (value instanceof Area area) {
            return new Area(area.squareInches().plus(Ratio.ONE));
        }
        return value instanceof Angle ? Angle.degrees(33) : Ratio.of(1, 33);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # no such rule: the nearest spelling is named
            rise-at-least    | | 8 1/4 in | IRC 2021 has no rule called rise-at-least    | the nearest is rise-at-most
            riser-max        | | 8 1/4 in | IRC 2021 has no rule called riser-max        | the nearest is rise-at-most
            # right rule, wrong clause
            rise-at-most | R311.7.5 | 8 1/4 in | rise-at-most does not stand in R311.7.5 of IRC 2021 | name its clause: R311.7.5.1
            nosing-waiver-run | R9 | 9 in | nosing-waiver-run does not stand in R9 of IRC 2021 | name its clause: R311.7.5.3 Ex.
            # a limit of another kind
            unrailed-risers-less-than | | 3 in | the limit of unrailed-risers-less-than is a count, not a length | give a count; the book has 4
            # no limit to move
            handrail-full-length | | 3 in | handrail-full-length has no limit to change | say `limit: not enforced` to lift it, or leave the change out
            top-landing-waiver-indoors | | 3 in | top-landing-waiver-indoors is part of a rule and cannot be lifted by itself | change top-landing-depth-at-least or top-landing-width-at-least or top-landing-fall-at-most instead
            # less than nothing
            rise-at-most | | -8 in | a limit of -8" for rise-at-most is less than nothing | give it without a minus; the book has 7 3/4"
            """)
    void a_change_that_makes_no_sense_is_told_with_what_would(
            String rule, String clause, String limit, String wrong, String right) {
        Amendment amendment =
                new Amendment(rule, Optional.ofNullable(clause), Optional.of(Read.inches(limit)), "an office", "", "");
        assertIsProblem(amendment, wrong, right);
    }

    @Test
    void a_proviso_cannot_be_lifted_by_itself() {
        assertIsProblem(
                lift("open-riser-height"),
                "open-riser-height is part of a rule and cannot be lifted by itself",
                "change open-riser-gap-less-than instead");
    }

    @Test
    void a_change_must_say_who_says_so() {
        assertIsProblem(
                new Amendment("rise-at-most", Optional.empty(), Optional.of(Read.inches("8 in")), " ", "", ""),
                "the change to rise-at-most does not say who says so",
                "name the office or the ordinance");
    }

    @Test
    void a_rule_is_changed_once() {
        Amended amended = Irc2021.rulebook().amended(List.of(RISE, change("rise-at-most", Length.inches(9))));
        assertThat(amended.book().amendments()).containsExactly(RISE);
        assertThat(amended.problems())
                .extracting(problem -> problem.wrong().toString())
                .containsExactly("rise-at-most was changed before");
    }

    private static void assertIsProblem(Amendment amendment, String wrong, String right) {
        Amended amended = Irc2021.rulebook().amended(List.of(amendment));
        assertThat(amended.book()).isEqualTo(Irc2021.rulebook());
        assertThat(amended.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.wrong()).hasToString(wrong);
            assertThat(problem.right()).hasToString(right);
        });
    }
}
