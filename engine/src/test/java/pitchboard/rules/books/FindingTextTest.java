package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.StairFixtures;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.FindingText;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.america.Irc2018;

final class FindingTextTest {
    private static Finding finding(String rule, String changes, Rulebook book) {
        return Checker.check(StairFixtures.stair(changes), book).stream()
                .filter(each -> each.rule().id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    private static String plain(Finding finding) {
        return FindingText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN).line(finding);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            # a pass: what was measured and the limit
            rise-at-most | | rise of a step: 7 1/2", at most 7 3/4" [IRC 2018 R311.7.5.1]
            # a failure: where, by how much, and what to do
            guard-height-at-least | guard height 30 in | height of the guard: 30" (the guard), must be at least 34", 4" too little; raise the guard by 4" [IRC 2018 R312.1.2 Ex.1; read in another edition, check before relying on it]
            # just the limit, where the limit itself fails
            guard-triangle-less-than | triangle 6 in | triangle of tread, riser and bottom rail: 6" (the guard), must be less than 6", and is just that; lower the bottom rail until only a ball of 5 15/16" passes [IRC 2018 R312.1.3 Ex.1; read in another edition, check before relying on it]
            # a hair over the limit is not shown as the limit
            rise-at-most | total rise 93.00048 in | rise of a step: 7.75004 in (every step), must be at most 7 3/4", 0.00004 in too much; use 13 risers: the rise becomes 7.154 in [IRC 2018 R311.7.5.1]
            # why not, and what is missing
            handrail-height-at-most | rails none | height of the handrail: does not apply: no handrail is planned [IRC 2018 R311.7.8.1]
            bottom-landing-depth-at-least | bottom depth ? | depth of the bottom landing: cannot tell: measure how far the bottom landing goes on level in the direction of travel [IRC 2018 R311.7.6; read in another edition, check before relying on it]
            # what is from memory says so
            handrail-projection-at-most | | reach of the handrail into the width: 3 1/2", at most 4 1/2" [IRC 2018 R311.7.8.2; from memory, check before relying on it]
            """)
    void a_finding_is_one_plain_line(String rule, String changes, String line) {
        String said = changes == null ? "" : changes;
        assertThat(plain(finding(rule, said, Irc2018.rulebook()))).isEqualTo(line);
    }

    @Test
    void a_printed_line_has_the_strokes_and_signs_of_print() {
        Finding finding = finding("rise-at-most", "total rise 105 in; risers 12", Irc2018.rulebook());
        assertThat(FindingText.on(Tape.SIXTEENTHS, Tape.Style.PRINTED).line(finding))
                .isEqualTo("rise of a step: 8 3⁄4″ (every step), must be at most 7 3⁄4″, 1″ too much;"
                        + " use 14 risers: the rise becomes 7 1⁄2″ [IRC 2018 R311.7.5.1]");
    }

    @Test
    void a_crew_with_a_metric_tape_reads_the_limits_of_inches_exactly() {
        Finding finding = finding("rise-at-most", "tape millimetres; total rise 2364 mm", Irc2018.rulebook());
        assertThat(FindingText.on(Tape.MILLIMETRES, Tape.Style.PLAIN).line(finding))
                .isEqualTo("rise of a step: 197 mm (every step), must be at most 196.85 mm, 0.15 mm too much;"
                        + " use 13 risers: the rise becomes 181.846 mm [IRC 2018 R311.7.5.1]");
    }

    @Test
    void every_line_of_every_book_is_one_line_and_cites_its_clause() {
        for (Rulebook book : Books.all()) {
            assertThat(Checker.check(StairFixtures.stair("lit ?; guard no; setting outdoors; run 9 in"), book))
                    .allSatisfy(finding -> assertThat(plain(finding))
                            .startsWith(finding.rule().subject() + ": ")
                            .contains("[" + finding.rule().clause().citation())
                            .doesNotContain("\n", "{", "  ", "..")
                            .hasSizeLessThan(420));
        }
    }
}
