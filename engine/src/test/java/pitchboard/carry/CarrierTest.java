package pitchboard.carry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.StairFixtures;
import pitchboard.measure.Tape;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.stair.Stair;

/** What comes of whole stairs, at and around the edges. The lawful stair is of a wood nobody named, indoors. */
final class CarrierTest {
    private static Carried check(String changes) {
        return check(changes, "IRC 2021");
    }

    private static Carried check(String changes, String book) {
        Rulebook rules = Books.findByName(book).orElseThrow();
        Stair stair = StairFixtures.stair(changes);
        return Carrier.check(stair, rules, List.of());
    }

    private static MemberFinding find(Carried carried, String id) {
        return carried.findings().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String verdict(MemberFinding finding) {
        return finding.verdict().match(pass -> "pass", fail -> "fail", not -> "none", cannot -> "?");
    }

    private static String next(MemberFinding finding) {
        return MemberText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN).next(finding);
    }

    /** Deck guide, DCA 6 (2015): 72 in reach, 18 in apart, three of them, 5 in of wood; the limit itself passes. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            published-reach       | risers 9; run 9 in                | pass
            published-reach       | risers 9; run 9 1/64 in           | fail
            published-reach       | risers 9; run 8 63/64 in          | pass
            published-spacing     | width 37 1/2 in                   | pass
            published-spacing     | width 37 33/64 in                 | fail
            published-count       | stringers 3                       | pass
            published-count       | stringers 2                       | fail
            published-throat      | stock depth 11 1/64 in            | pass
            published-throat      | stock depth 10 63/64 in           | fail
            published-depth       | stock depth 11 1/4 in             | pass
            published-depth       | stock depth 11 15/64 in           | fail
            published-thin-treads | thickness 1 in; width 37 1/2 in   | pass
            published-thin-treads | thickness 1 in; width 37 33/64 in | fail
            published-thin-treads | thickness 63/64 in                | fail
            """)
    void published_limits_are_judged_at_and_on_either_side(String id, String changes, String expected) {
        assertThat(verdict(find(check(changes + "; setting outdoors"), id))).isEqualTo(expected);
    }

    @Test
    void published_limits_are_for_decks_only() {
        assertThat(verdict(find(check(""), "published-reach"))).isEqualTo("none");
    }

    @Test
    void published_limits_are_for_light_loads_only() {
        Carried crowd = check("setting outdoors", "IBC 2021");
        assertThat(verdict(find(crowd, "published-reach"))).isEqualTo("none");
        assertThat(crowd.findings()).noneMatch(finding -> finding.id().equals("published-depth"));
    }

    /** What passes with the weakest wood passes; what only better wood carries asks for it; the rest fails. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            risers 7; total rise 52 1/2 in   | pass
            risers 10; total rise 75 in   | ?
            risers 12; total rise 90 in      | fail
            """)
    void a_wood_nobody_named_is_the_weakest_and_fails_only_if_the_best_does(String changes, String expected) {
        Carried carried = check(changes);
        assertThat(verdict(find(carried, "stringer-sag"))).isEqualTo(expected);
        assertThat(carried.assumptions()).anyMatch(words -> words.contains("Northern Species No.1/No.2"));
    }

    @Test
    void where_better_wood_would_do_it_is_asked_for() {
        assertThat(next(find(check("risers 10; total rise 75 in"), "stringer-sag")))
                .startsWith("say of what wood it is")
                .contains("Douglas Fir-Larch Select Structural");
    }

    @Test
    void a_fail_says_what_helps_first_with_least_work() {
        Carried carried = check("risers 12; total rise 90 in");
        assertThat(carried.hasFailures()).isTrue();
        assertThat(carried.waysOut()).hasSizeGreaterThan(4);
        List<WayOut> helping = carried.waysOut().stream().filter(WayOut::helps).toList();
        assertThat(helping).isNotEmpty();
        assertThat(carried.waysOut()).startsWith(helping.toArray(WayOut[]::new));
        assertThat(helping).extracting(WayOut::hours).isSorted();
        assertThat(next(find(carried, "stringer-sag")))
                .isEqualTo(MemberText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN)
                        .words(helping.get(0).what()));
    }

    @Test
    void what_carries_needs_no_way_out() {
        assertThat(check("risers 7; total rise 52 1/2 in").waysOut()).isEmpty();
    }

    /** The Supplement has no board 11 in deep; it says which there are. */
    @Test
    void a_size_the_table_does_not_have_cannot_be_told() {
        MemberFinding bending = find(check("stock depth 11 in"), "stringer-bending");
        assertThat(verdict(bending)).isEqualTo("?");
        assertThat(next(bending)).contains("1.5 by 11 in").contains("11.25");
    }

    @Test
    void thin_treads_cannot_be_told_by_the_tables() {
        MemberFinding bending = find(check("thickness 1 in"), "tread-bending");
        assertThat(verdict(bending)).isEqualTo("?");
        assertThat(next(bending)).contains("the span its maker states");
        assertThat(verdict(find(check("thickness 1 1/2 in"), "tread-bending"))).isEqualTo("pass");
    }

    /** NDS 4.4.3 lets a notch be a sixth of the depth; no cut stringer keeps to it. */
    @Test
    void the_cuts_are_never_passed() {
        for (String tape : List.of("inches", "millimetres")) {
            MemberFinding cuts = find(check("risers 3; total rise 15 in; tape " + tape), "stringer-notches");
            assertThat(verdict(cuts)).isEqualTo("?");
            assertThat(next(cuts)).contains("no published rule").contains("licensed engineer");
        }
    }

    @Test
    void a_metric_tape_means_eurocode_and_no_american_limits() {
        Carried carried = check("tape millimetres", "DIN 18065 dwelling");
        assertThat(carried.method()).contains("Eurocode 5");
        assertThat(carried.findings()).noneMatch(finding -> finding.topic() == MemberFinding.Topic.PUBLISHED);
        assertThat(find(carried, "stringer-bending").working().orElseThrow().factors())
                .extracting(factor -> factor.symbol())
                .contains("kmod", "1/gammaM", "kh", "ksys", "kcrit");
    }

    /** By American codes one load on one stringer alone is nobody's rule, so nothing fails by it; by Eurocode it counts. */
    @Test
    void one_load_on_one_stringer_is_judged_by_whoever_asks_for_it() {
        assertThat(verdict(find(check("risers 12; total rise 90 in"), "stringer-point-load")))
                .isEqualTo("?");
        assertThat(verdict(find(
                        check("risers 16; total rise 90 in; tape millimetres", "DIN 18065 dwelling"),
                        "stringer-point-load")))
                .isEqualTo("fail");
    }
}
