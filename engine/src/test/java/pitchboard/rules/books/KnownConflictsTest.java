package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchboard.OrdinaryJob;
import pitchboard.StairFixtures;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Rulebook;
import pitchboard.rules.RulebookGate;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.rules.books.europe.ApprovedDocumentK2013;
import pitchboard.stair.Choices;
import pitchboard.stair.Stair;

/** Cases that are known to trip people up, because each number alone looks lawful, or a habit of the trade is not. */
final class KnownConflictsTest {
    private static final String METRIC = "tape millimetres; boards 20 mm; ";

    private static List<String> fails(String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book).stream()
                .filter(Finding::isFailure)
                .map(finding -> finding.rule().id())
                .toList();
    }

    private static VerdictWord verdict(String rule, String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book).stream()
                .filter(finding -> finding.rule().id().equals(rule))
                .map(finding -> VerdictWord.of(finding.verdict()))
                .findFirst()
                .orElseThrow();
    }

    private static String line(String rule, Stair stair, Rulebook book) {
        FindingText text = FindingText.on(stair.brief().tape(), Tape.Style.PLAIN);
        return Checker.check(stair, book).stream()
                .filter(finding -> finding.rule().id().equals(rule))
                .map(text::line)
                .findFirst()
                .orElseThrow();
    }

    /** Approved Document K 2013, Table 1.1 and its note 1: both are allowed, but 45 degrees is not. */
    @Test
    void in_england_220_over_220_fails_by_pitch_though_both_figures_stand_in_the_table() {
        String stair = METRIC + "risers 12; total rise 2640 mm; run 220 mm; treads 240 mm; overhang 40 mm";
        Rulebook book = ApprovedDocumentK2013.rulebook();
        assertThat(verdict("rise-at-most", stair, book)).isEqualTo(VerdictWord.PASS);
        assertThat(verdict("run-at-least", stair, book)).isEqualTo(VerdictWord.PASS);
        assertThat(line("pitch-at-most", StairFixtures.stair(stair), book))
                .isEqualTo("pitch: 45 deg (the whole flight), must be at most 42 deg, 3 deg too much;"
                        + " lengthen the run to 245 mm, or use 14 risers: the rise becomes 188.571 mm"
                        + " [AD K 2013 Table 1.1 note 1]");
    }

    /** 2 × 220 + 300 = 740: over the 700 of the note to Table 1.1, and 2 × 150 + 220 = 520: under its 550. */
    @Test
    void in_england_the_ends_of_the_table_fail_together_by_the_step_formula() {
        Rulebook book = ApprovedDocumentK2013.rulebook();
        String largest = METRIC + "risers 10; total rise 2200 mm; run 300 mm";
        String smallest = METRIC + "risers 10; total rise 1500 mm; run 220 mm";
        assertThat(fails(largest, book)).contains("step-formula-at-most").doesNotContain("rise-at-most", "run-at-most");
        assertThat(fails(smallest, book))
                .contains("step-formula-at-least")
                .doesNotContain("rise-at-least", "run-at-least");
    }

    /** 105 in over 12 risers is 8 3/4 in, a worked example of the trade; IRC R311.7.5.1 allows 7 3/4 in. */
    @Test
    void eight_and_three_quarters_fails_the_irc_which_says_what_would_pass() {
        Stair stair = StairFixtures.stair("total rise 105 in; risers 12");
        assertThat(line("rise-at-most", stair, Irc2018.rulebook()))
                .isEqualTo("rise of a step: 8 3/4\" (every step), must be at most 7 3/4\", 1\" too much;"
                        + " use 14 risers: the rise becomes 7 1/2\" [IRC 2018 R311.7.5.1]");
        assertThat(verdict("rise-at-most", "total rise 105 in; risers 14", Irc2018.rulebook()))
                .isEqualTo(VerdictWord.PASS);
        assertThat(verdict("rise-at-most", "total rise 105 in; risers 13", Irc2018.rulebook()))
                .isEqualTo(VerdictWord.FAIL);
    }

    /** IRC R311.7.5.1: the real thickness of the tread decides. 7 3/4 less 1 1/2 leaves 6 1/4; 2 1/4 would leave 4. */
    @Test
    void an_open_riser_of_7_3_4_under_1_1_2_treads_fails_the_sphere_and_names_the_strip() {
        Stair stair = StairFixtures.stair("total rise 93 in; boards open; thickness 1 1/2 in; overhang 1 1/4 in");
        assertThat(line("open-riser-gap-less-than", stair, Irc2018.rulebook()))
                .isEqualTo("opening between treads: 6 1/4\" (the opening below tread 5), must be less than 4\","
                        + " 2 1/4\" too much; close the risers with boards, or narrow each opening by a strip of at"
                        + " least 2 5/16\" [IRC 2018 R311.7.5.1]");
    }

    /** Common practice: a 10 in run under one board of 11 1/4 in leaves 1 1/4 in, just what IRC R311.7.5.3 allows. */
    @Test
    void a_ten_inch_run_under_one_wide_board_leaves_a_lawful_nosing() {
        Stair stair = StairFixtures.stair("run 10 in; treads 11 1/4 in");
        assertThat(stair.projection()).isEqualTo(Length.inches(1, 1, 4));
        assertThat(verdict("nosing-at-most", "run 10 in; treads 11 1/4 in", Irc2021.rulebook()))
                .isEqualTo(VerdictWord.PASS);
    }

    /** IRC R311.7.8.5: a 2x2 measures 6 in around and 2.12 in across; a 2x4 measures 10 in around. */
    @Test
    void a_two_by_two_is_a_rail_and_a_two_by_four_is_not() {
        Rulebook book = Irc2021.rulebook();
        assertThat(fails("grip 1 1/2 in x 1 1/2 in", book)).isEmpty();
        assertThat(fails("grip 1 1/2 in x 3 1/2 in", book))
                .containsExactly("grip-perimeter-at-most", "grip-section-at-most");
        assertThat(verdict("recess-depth-at-least", "grip 1 1/2 in x 3 1/2 in", book))
                .isEqualTo(VerdictWord.CANNOT_TELL);
        assertThat(fails("grip 5 1/2 in x 1 1/2 in", book))
                .containsExactly("grip-perimeter-at-most", "grip-section-at-most", "recess-top-width-at-most");
    }

    /** IRC R311.7.8 counts risers: three treads below a floor are four of them. */
    @Test
    void three_treads_and_the_floor_are_four_risers() {
        Stair stair = StairFixtures.stair("risers 4; total rise 30 in; rails none");
        assertThat(stair.treads()).isEqualTo(3);
        assertThat(fails("risers 4; total rise 30 in; rails none", Irc2021.rulebook()))
                .contains("unrailed-risers-less-than");
    }

    /** IRC R312.1.1: grade beside the flight may fall away. Level ground of 29 in is not enough to know. */
    @Test
    void ground_that_falls_away_beside_the_flight_counts() {
        String stair = "setting outdoors; guard no; risers 5; total rise 36 1/4 in; ";
        assertThat(verdict("unguarded-drop-at-most", stair + "fall beside ?", Irc2021.rulebook()))
                .isEqualTo(VerdictWord.CANNOT_TELL);
        assertThat(verdict("unguarded-drop-at-most", stair + "fall beside 1 in", Irc2021.rulebook()))
                .isEqualTo(VerdictWord.PASS);
        assertThat(verdict("unguarded-drop-at-most", stair + "fall beside 2 in", Irc2021.rulebook()))
                .isEqualTo(VerdictWord.FAIL);
    }

    /** Both climb 35 in from where the foot stands; under the head of the second the ground lies 20 in lower still. */
    @Test
    void ground_that_falls_away_under_the_flight_counts_too() {
        String level = "boards open; setting outdoors; risers 5; total rise 35 in; thickness 1 in; ";
        String falling = "boards open; setting outdoors; risers 5; level line 0 in down 55 in, 40 in down 35 in; ";
        assertThat(verdict("open-riser-gap-less-than", level, Irc2021.rulebook()))
                .isEqualTo(VerdictWord.NOT_APPLICABLE);
        assertThat(StairFixtures.stair(falling).flight().totalRise()).isEqualTo(Length.inches(35));
        assertThat(verdict("open-riser-gap-less-than", falling, Irc2021.rulebook()))
                .isEqualTo(VerdictWord.FAIL);
        assertThat(verdict("unguarded-drop-at-most", falling + "guard no", Irc2021.rulebook()))
                .isEqualTo(VerdictWord.FAIL);
    }

    /** DERIVED from the limits of the IRC: twice 7 3/4 and 10 is 25 1/2; no step formula binds there. */
    @Test
    void the_steepest_stair_of_the_irc_passes() {
        assertThat(fails("total rise 93 in; run 10 in", Irc2021.rulebook())).isEmpty();
    }

    /** Whatever is chosen by a book breaks nothing that the book says of rise and run. */
    @Test
    void what_a_book_lets_through_has_nothing_against_it() {
        for (Rulebook book : Books.all()) {
            RulebookGate gate = new RulebookGate(book);
            Choices choices = OrdinaryJob.ofRise(Length.inches(75))
                    .millimetres()
                    .stock(Length.inches(14))
                    .treads(Length.mm(320), Length.mm(38))
                    .choices(gate);
            assertThat(choices.allowed())
                    .as(book.name())
                    .isNotEmpty()
                    .allSatisfy(option ->
                            assertThat(gate.objections(option.stair())).isEmpty());
            assertThat(choices.nearMisses())
                    .as(book.name())
                    .isNotEmpty()
                    .allSatisfy(option -> assertThat(option.objections()).isNotEmpty());
        }
    }
}
