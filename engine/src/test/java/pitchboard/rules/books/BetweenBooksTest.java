package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.StairFixtures;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.rules.Amendment;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.america.Ibc2021;
import pitchboard.rules.books.america.Ibc2021Dwelling;
import pitchboard.rules.books.america.Irc2018;
import pitchboard.rules.books.america.Irc2021;
import pitchboard.rules.books.america.Nbc2020;
import pitchboard.rules.books.america.Osha1910;
import pitchboard.rules.books.america.Osha1926;
import pitchboard.rules.books.pacific.D1As1;
import pitchboard.rules.kinds.guards.OneRail;

/** What one book lets through and another does not, and what the figures of one book rule out together. */
final class BetweenBooksTest {
    private static final Rulebook IRC = Irc2018.rulebook();

    private static List<String> fails(String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book).stream()
                .filter(Finding::isFailure)
                .map(finding -> finding.rule().id())
                .toList();
    }

    private static VerdictWord verdict(String rule, String changes, Rulebook book) {
        return VerdictWord.of(finding(rule, changes, book).verdict());
    }

    private static Finding finding(String rule, String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book).stream()
                .filter(finding -> finding.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static String line(String rule, String changes, Rulebook book) {
        Tape tape = StairFixtures.stair(changes).brief().tape();
        return FindingText.on(tape, Tape.Style.PLAIN).line(finding(rule, changes, book));
    }

    /** 29 CFR 1910.25(c)(1) and 1926.1052(a)(2): at least 30 degrees; 6 over 12 is 26.6. The IRC has no such floor. */
    @Test
    void six_over_twelve_is_too_flat_at_work_and_lawful_at_home() {
        String stair = "risers 12; total rise 72 in; run 12 in; treads 13 in; overhang 1 3/4 in";
        assertThat(fails(stair, IRC)).isEmpty();
        for (Rulebook book : List.of(Osha1910.rulebook(), Osha1926.rulebook())) {
            assertThat(fails(stair, book)).contains("pitch-at-least");
        }
        assertThat(line("pitch-at-least", stair, Osha1910.rulebook()))
                .isEqualTo("pitch: 26.6 deg (the whole flight), must be at least 30 deg, 3.43 deg too little;"
                        + " shorten the run to 10 3/8\", or use 10 risers: the rise becomes 7.2 in"
                        + " [OSHA 1910 1910.25(c)(1)]");
    }

    /** 29 CFR 1910.25(c)(1) to (3): the printed 50 degrees cannot be met by 9 1/2 over 9 1/2, which is 45. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            95 in      | 9 1/2 in   |
            95 1/64 in | 9 1/2 in   | rise-at-most
            95 in      | 9 31/64 in | run-at-least
            110 in     | 9 1/4 in   | rise-at-most run-at-least
            """)
    void no_lawful_rise_and_run_come_near_the_fifty_degrees_of_osha_1910(String rise, String run, String expected) {
        String stair = "risers 10; total rise " + rise + "; run " + run + "; treads 11 in";
        assertThat(verdict("pitch-at-most", stair, Osha1910.rulebook())).isEqualTo(VerdictWord.PASS);
        assertThat(fails(stair, Osha1910.rulebook()))
                .filteredOn(rule -> rule.equals("rise-at-most") || rule.equals("run-at-least"))
                .containsExactlyElementsOf(expected == null ? List.of() : List.of(expected.split(" ", -1)));
    }

    /** A letter of 17 June 2025 on 1910.25(c)(3): 8 in of run and 1 1/2 in of nosing are no 9 1/2 in. */
    @Test
    void a_nosing_is_not_counted_as_run() {
        assertThat(verdict("run-at-least", "run 8 in; treads 9 1/2 in", Osha1910.rulebook()))
                .isEqualTo(VerdictWord.FAIL);
    }

    /** IRC R311.7.8.1 34 to 38, R312.1.2 34, 1926.1052(c)(3) 36, (c)(6) and (c)(7) 37 in. */
    @Test
    void one_rail_does_for_the_irc_and_a_construction_site_from_36_to_37_inches() {
        OneRail both = OneRail.under(List.of(IRC, Osha1926.rulebook()));
        assertThat(both.least()).contains(Length.inches(36));
        assertThat(both.most()).contains(Length.inches(37));
        for (Length height = Length.inches(30);
                height.isAtMost(Length.inches(44));
                height = height.plus(Length.inches(0, 1, 16))) {
            String stair = "rails right; rail height " + inches(height) + "; guard height " + inches(height);
            List<String> all = Stream.of(IRC, Osha1926.rulebook())
                    .flatMap(book -> fails(stair, book).stream())
                    .filter(rule -> rule.contains("height") || rule.contains("as-handrail"))
                    .toList();
            assertThat(all.isEmpty()).as(stair).isEqualTo(both.admits(height));
        }
    }

    private static String inches(Length length) {
        long sixteenths = length.inInches().times(16).numerator().longValueExact();
        return sixteenths / 16 + (sixteenths % 16 == 0 ? "" : " " + sixteenths % 16 + "/16") + " in";
    }

    /** 1910.29(f)(1): since 2017 a stair rail of 42 in, and a handrail of 30 to 38 in: two rails. */
    @Test
    void at_work_the_guard_can_no_longer_be_the_handrail() {
        assertThat(OneRail.under(List.of(Osha1910.rulebook())).mustBeTwo()).isTrue();
        assertThat(fails("rails right; rail height 36 in; guard height 36 in", Osha1910.rulebook()))
                .contains("guard-height-at-least");
        assertThat(fails("rails right; rail height 42 in; guard height 42 in", Osha1910.rulebook()))
                .contains("guard-as-handrail-at-most", "handrail-height-at-most");
        assertThat(fails("rails right; rail height 36 in; guard height 42 in", Osha1910.rulebook()))
                .doesNotContain("guard-height-at-least", "guard-as-handrail-at-most", "handrail-height-at-most");
    }

    /** What a local change lifts holds no rail down. */
    @Test
    void one_rail_follows_local_changes() {
        Amendment change = new Amendment(
                "guard-height-at-least", Optional.empty(), Optional.of(Length.inches(37)), "the town", "", "");
        Amendment lift =
                new Amendment("handrail-height-at-most", Optional.empty(), Optional.empty(), "the town", "", "");
        Rulebook town = IRC.amended(List.of(change, lift)).book();
        assertThat(OneRail.under(List.of(town)).least()).contains(Length.inches(37));
        assertThat(OneRail.under(List.of(town)).most()).contains(Length.inches(38));
        assertThat(OneRail.under(List.of()).mustBeTwo()).isFalse();
        assertThat(OneRail.under(List.of()).admits(Length.inches(1))).isTrue();
    }

    /** 1910.29(f)(2) 2 1/4 in; IRC R311.7.8.2 4 1/2 in: a 2 in rail that stands 2 1/4 off the wall reaches in 4 1/4. */
    @Test
    void a_two_inch_rail_two_and_a_quarter_off_the_wall_does_for_home_and_work() {
        String stair = "grip round 2 in; clearance 2 1/4 in; reach 4 1/4 in";
        for (Rulebook book : List.of(IRC, Osha1910.rulebook())) {
            assertThat(fails(stair, book))
                    .doesNotContain("handrail-clearance-at-least", "handrail-projection-at-most", "round-grip-at-most");
        }
    }

    /** IRC R311.7.5.2 lets runs differ by 3/8 in, 1926.1052(a)(3) by 1/4 in. */
    @Test
    void a_top_run_three_eighths_off_passes_at_home_and_fails_on_a_site() {
        assertThat(verdict("run-spread-at-most", "overhang 1 5/8 in", IRC)).isEqualTo(VerdictWord.PASS);
        assertThat(verdict("run-spread-at-most", "overhang 1 5/8 in", Osha1926.rulebook()))
                .isEqualTo(VerdictWord.FAIL);
    }

    /** IBC 1011.5.2: 7 over 11; its exception 3 for dwellings, like the IRC: 7 3/4 over 10. */
    @Test
    void the_stair_of_a_house_fails_in_a_shop() {
        assertThat(fails("", Ibc2021.rulebook())).contains("rise-at-most", "run-at-least", "handrail-sides-at-least");
        assertThat(fails("opening 3 in", Ibc2021Dwelling.rulebook())).isEmpty();
    }

    /** NBC 9.8.9.4(1)(a): at 200 over 255 a 235 mm board keeps 78 mm of the 90, and a 286 mm board 129. */
    @Test
    void in_canada_the_least_board_is_too_slender_once_it_is_cut() {
        String stair = "tape millimetres; risers 13; total rise 2600 mm; run 255 mm; treads 280 mm; ";
        Rulebook book = Nbc2020.rulebook();
        assertThat(verdict("stringer-depth-at-least", stair + "stock depth 235 mm", book))
                .isEqualTo(VerdictWord.PASS);
        assertThat(line("stringer-throat-at-least", stair + "stock depth 235 mm", book))
                .isEqualTo("wood left in the stringer under a step: 77.629 mm (every step), must be at least 90 mm,"
                        + " 12.371 mm too little; cut the stringers from boards at least 248 mm deep"
                        + " [NBC 2020 9.8.9.4(1)(a); read in another edition, check before relying on it]");
        assertThat(verdict("stringer-throat-at-least", stair + "stock depth 286 mm", book))
                .isEqualTo(VerdictWord.PASS);
    }

    /** Each at the limits of its own table: 655 mm in Canada, 620 in Australia, 630 in Germany; none too steep. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            NBC 2020 private       | 200 | 255
            NCC 2022 private       | 190 | 240
            DIN 18065 dwelling     | 200 | 230
            NZ D1/AS1 main private | 190 | 280
            """)
    void the_steepest_stair_of_a_table_passes_what_rise_and_run_must_keep_together(String name, int rise, int run) {
        String stair = "tape millimetres; boards 20 mm; risers 13; total rise " + rise * 13 + " mm; run " + run + " mm;"
                + " treads " + (run + 25) + " mm; overhang 45 mm";
        assertThat(fails(stair, Books.findByName(name).orElseThrow()))
                .doesNotContain(
                        "rise-at-most",
                        "run-at-least",
                        "pitch-at-most",
                        "step-formula-at-least",
                        "step-formula-at-most");
    }

    /** D1/AS1 Table 6: 190 over 280 is 34.2 degrees, so that its 37 never bite. */
    @Test
    void the_pitch_of_a_main_stair_in_new_zealand_never_bites() {
        Rulebook book = D1As1.rulebooks().get(1);
        for (int rise = 150; rise <= 190; rise += 5) {
            for (int run = 280; run <= 320; run += 5) {
                String stair = "risers 10; total rise " + rise * 10 + " mm; run " + run + " mm; treads 330 mm";
                assertThat(fails(stair, book)).doesNotContain("rise-at-most", "run-at-least", "pitch-at-most");
            }
        }
    }

    /** IRC R311.7.3 and R311.7.5.1: a flight of 151 in takes 20 risers of 7.55 in; 19 would be 7.95. */
    @Test
    void a_full_flight_of_the_irc_takes_twenty_risers() {
        assertThat(fails("total rise 151 in; risers 20", IRC)).isEmpty();
        assertThat(fails("total rise 151 in; risers 19", IRC)).containsExactly("rise-at-most");
    }

    /** Nothing binds where no code applies: what is out of the advice is to be decided, and the advice says its source. */
    @Test
    void without_a_code_nothing_fails_and_the_advice_is_told_with_its_source() {
        Rulebook book = NoCode.rulebook();
        String steep =
                "risers 8; total rise 90 in; run 6 in; boards open; rails none; guard no; overhead 60 in from 20 in";
        assertThat(fails(steep, book)).isEmpty();
        assertThat(line("rise-at-most", steep, book))
                .isEqualTo("rise of a step: cannot tell: decide whether 11 1/4\" will do: no code asks, but the advice"
                        + " is at most 8\"; to keep to it, use 12 risers: the rise becomes 7 1/2\""
                        + " [no code, guidance only (US Army EN5156 text)]");
        assertThat(verdict("rise-times-run-at-most", "total rise 84 in; run 11 in", book))
                .isEqualTo(VerdictWord.CANNOT_TELL);
        assertThat(verdict("rise-times-run-at-most", "", book)).isEqualTo(VerdictWord.PASS);
        assertThat(verdict("unrailed-risers-less-than", "rails none", book)).isEqualTo(VerdictWord.CANNOT_TELL);
    }

    /** Three risers can climb more than 30 in where nothing limits a rise: 1926.1052(c)(1), whichever is less. */
    @Test
    void on_a_site_three_high_risers_need_a_rail() {
        assertThat(fails("risers 3; total rise 33 in; rails none", Osha1926.rulebook()))
                .contains("unrailed-rise-at-most")
                .doesNotContain("unrailed-risers-less-than");
        assertThat(fails("risers 4; total rise 28 in; rails none", Osha1926.rulebook()))
                .contains("unrailed-risers-less-than")
                .doesNotContain("unrailed-rise-at-most");
        assertThat(fails("", Irc2021.rulebook())).isEmpty();
    }
}
