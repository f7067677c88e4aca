package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.StairFixtures;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Amendment;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.Rulebook;
import pitchboard.rules.RulebookGate;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.stair.Objection;
import pitchboard.stair.Stair;

final class RulebookGateTest {
    private static final RulebookGate GATE = new RulebookGate(Irc2021.rulebook());

    @Test
    void a_lawful_stair_meets_no_objection() {
        assertThat(GATE.objections(StairFixtures.stair(""))).isEmpty();
    }

    @Test
    void an_objection_says_what_was_measured_by_which_clause_and_what_would_fit() {
        assertThat(GATE.objections(StairFixtures.stair("total rise 105 in; risers 12")))
                .containsExactly(new Objection(
                        "rise-at-most",
                        "rise of a step",
                        Length.inches(8, 3, 4),
                        Length.inches(7, 3, 4),
                        "IRC 2021 R311.7.5.1",
                        Phrase.of("use {} risers: the rise becomes {}", new Count(14), Length.inches(7, 1, 2))));
    }

    @Test
    void every_objection_is_a_failing_finding_too() {
        Stair stair = StairFixtures.stair("total rise 160 in; risers 19; run 9 in; overhead 100 in from 20 in");
        for (Rulebook book : Books.all()) {
            List<String> fails = Checker.check(stair, book).stream()
                    .filter(Finding::isFailure)
                    .map(finding -> finding.rule().id())
                    .toList();
            List<String> objections = new RulebookGate(book)
                    .objections(stair).stream().map(Objection::id).toList();
            assertThat(objections.isEmpty()).as(book.name()).isEqualTo(book.equals(NoCode.rulebook()));
            assertThat(fails).containsAll(objections);
        }
    }

    /** Else no stair at all would fit a job whose rail or guard is still to be decided. */
    @Test
    void what_a_rail_or_a_board_puts_right_does_not_stand_against_risers_and_run() {
        Stair stair = StairFixtures.stair("rails none; guard no; boards open; overhang 4 in; width 30 in; lit no");
        assertThat(Checker.check(stair, Irc2021.rulebook()))
                .filteredOn(Finding::isFailure)
                .hasSizeGreaterThan(5);
        assertThat(GATE.objections(stair)).isEmpty();
    }

    @Test
    void an_exempt_use_meets_no_objection() {
        assertThat(GATE.objections(StairFixtures.stair("total rise 105 in; use free standing")))
                .isEmpty();
    }

    @Test
    void a_changed_limit_is_cited_with_who_changed_it() {
        Amendment change =
                new Amendment("rise-at-most", Optional.empty(), Optional.of(Length.inches(8)), "the county", "", "");
        Rulebook book = Irc2021.rulebook().amended(List.of(change)).book();
        assertThat(new RulebookGate(book).objections(StairFixtures.stair("total rise 105 in; risers 12")))
                .extracting(Objection::citation)
                .containsExactly("IRC 2021 R311.7.5.1, changed by the county");
    }
}
