package pitchboard.carry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.GuardedStairs;
import pitchboard.Read;
import pitchboard.Rebuilt;
import pitchboard.StairFixtures;
import pitchboard.brief.Brief;
import pitchboard.brief.Fasteners;
import pitchboard.brief.FootPad;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.Joints;
import pitchboard.brief.Strength;
import pitchboard.brief.Support;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.Books;
import pitchboard.stair.Stair;

/** What whole stairs say of their joints, at and around the edges. */
final class JointFindingsTest {
    private static final Rulebook BOOK = Books.findByName("IRC 2021").orElseThrow();
    private static final String SHORT = "risers 7; total rise 52 1/2 in";

    private static final String OUTDOORS = SHORT + "; foot concrete; setting outdoors";

    private static Stair stair(String changes, String component, Object value) {
        Stair stair = StairFixtures.stair(changes);
        return new Stair(stair.site(), Rebuilt.with(stair.brief(), component, value), stair.flight());
    }

    private static Stair joined(String changes, String joint, Object value) {
        return stair(changes, "joints", Rebuilt.with(Joints.UNSAID, joint, value));
    }

    private static MemberFinding find(Stair stair, String id) {
        return Carrier.check(stair, BOOK, List.of()).findings().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(id));
    }

    private static String verdict(MemberFinding finding) {
        return finding.verdict().match(pass -> "pass", fail -> "fail", not -> "none", cannot -> "?");
    }

    private static String next(MemberFinding finding) {
        return MemberText.on(Tape.SIXTEENTHS, Tape.Style.PLAIN).next(finding);
    }

    @Test
    void what_nobody_said_is_told_as_what_it_must_hold() {
        MemberFinding hanger = find(StairFixtures.stair(SHORT), "head-hanger");
        assertThat(verdict(hanger)).isEqualTo("?");
        assertThat(next(hanger))
                .matches("each metal hanger must be allowed to carry [0-9.]+ lb down; say what yours may");
    }

    /** The force in the words is the one that decides: just as much passes, a pound less fails. */
    @ParameterizedTest
    @CsvSource({"0, pass", "1, pass", "-1, fail"})
    void a_hanger_is_judged_at_and_on_either_side(double more, String expected) {
        double needed = Double.parseDouble(
                next(find(StairFixtures.stair(SHORT), "head-hanger")).replaceAll(".*carry ([0-9.]+) lb.*", "$1"));
        Reckoned allowed = new Reckoned(needed + more + 0.05, Unit.POUND);
        assertThat(verdict(find(joined(SHORT, "hanger", Optional.of(allowed)), "head-hanger")))
                .isEqualTo(expected);
    }

    private static Fasteners lags(int number, String length) {
        return new Fasteners.Sized(
                Fasteners.Kind.LAG_SCREW,
                Optional.of(Length.inches(0, 3, 8)),
                Optional.empty(),
                Read.inches(length),
                number);
    }

    private static Stair onBoard(int number, String length) {
        Joints joints = Rebuilt.with(
                Rebuilt.with(Joints.UNSAID, "headBoard", Optional.of(lags(number, length))),
                "header",
                Optional.of(Length.inches(3, 1, 2)));
        Stair held = stair(SHORT, "joints", joints);
        Brief brief = Rebuilt.with(
                held.brief(), "headFixing", new HeadFixing.HangerBoard(Length.inches(1, 1, 2), Length.inches(5, 1, 2)));
        return new Stair(held.site(), brief, held.flight());
    }

    @Test
    void more_lags_hold_more_until_they_find_no_room() {
        double two = find(onBoard(2, "5 in"), "head-board").ratio().orElseThrow();
        double four = find(onBoard(4, "5 in"), "head-board").ratio().orElseThrow();
        assertThat(four).isLessThan(two);
        MemberFinding crowd = find(onBoard(20, "5 in"), "head-board");
        assertThat(verdict(crowd)).isEqualTo("?");
        assertThat(next(crowd)).contains("diameters").contains("it must hold");
    }

    @Test
    void a_lag_too_short_says_so_and_what_it_must_hold() {
        MemberFinding stub = find(onBoard(4, "1 in"), "head-board");
        assertThat(verdict(stub)).isEqualTo("?");
        assertThat(next(stub)).contains("ends inside").contains("it must hold");
    }

    @Test
    void by_eurocode_fasteners_cannot_be_told_but_what_they_must_hold_can() {
        Stair metric = StairFixtures.stair(SHORT + "; tape millimetres");
        assertThat(next(find(metric, "head-hanger"))).contains("kN down");
        Stair screwed = joined(SHORT + "; tape millimetres", "foot", Optional.of(lags(2, "5 in")));
        assertThat(verdict(find(screwed, "foot-slip"))).isEqualTo("?");
    }

    private static Stair onPad(Optional<FootPad.Soil> soil, long side, long thick) {
        FootPad.Size size = new FootPad.Size(Length.inches(side), Length.inches(side), Length.inches(thick));
        return joined(OUTDOORS, "pad", new FootPad(Optional.of(size), soil));
    }

    /** IRC Table R401.4.1: clay 1500, gravel 3000 psf; nobody said which, so it is taken for clay. */
    @Test
    void ground_nobody_told_is_taken_for_the_softest() {
        double unsaid =
                find(onPad(Optional.empty(), 24, 6), "pad-ground").ratio().orElseThrow();
        double clay = find(onPad(Optional.of(FootPad.Soil.CLAY_OR_SILT), 24, 6), "pad-ground")
                .ratio()
                .orElseThrow();
        double gravel = find(onPad(Optional.of(FootPad.Soil.GRAVEL), 24, 6), "pad-ground")
                .ratio()
                .orElseThrow();
        assertThat(unsaid).isEqualTo(clay);
        assertThat(gravel).isCloseTo(clay / 2, within(1e-6));
    }

    /** A slab of 3 1/2 in, a footing of 12 in (IRC R506.1, R403.1.1); the limit itself passes. */
    @ParameterizedTest
    @CsvSource({
        "pad-width, 12, 6, pass",
        "pad-width, 11, 6, fail",
        "pad-thickness, 12, 4, pass",
        "pad-thickness, 12, 3, fail"
    })
    void a_pad_has_a_least_size(String id, long side, long thick, String expected) {
        assertThat(verdict(find(onPad(Optional.empty(), side, thick), id))).isEqualTo(expected);
    }

    @Test
    void a_larger_pad_never_presses_harder() {
        double before = Double.MAX_VALUE;
        for (long side = 12; side <= 60; side += 6) {
            double now =
                    find(onPad(Optional.empty(), side, 6), "pad-ground").ratio().orElseThrow();
            assertThat(now).isLessThanOrEqualTo(before + 1e-9);
            before = now;
        }
    }

    private static Stair guarded(UnaryOperator<Joints> joints) {
        Stair stair = GuardedStairs.stair(
                "",
                build -> Rebuilt.with(
                        build, "posts", Rebuilt.with(build.posts(), "behindNosing", Optional.of(Length.inches(1)))));
        return new Stair(
                stair.site(), Rebuilt.with(stair.brief(), "joints", joints.apply(Joints.UNSAID)), stair.flight());
    }

    /** Deck guides ask 1,800 lb of a hold-down; the pull of the upper bolt is what decides. */
    @Test
    void a_hold_down_is_asked_for_and_held_against_the_pull() {
        MemberFinding unsaid = find(guarded(joints -> joints), "guard-post-hold-down");
        assertThat(verdict(unsaid)).isEqualTo("?");
        assertThat(next(unsaid)).contains("1800 lb").contains("outward");
        MemberFinding said = find(
                guarded(joints -> Rebuilt.with(joints, "holdDown", Optional.of(new Reckoned(1800, Unit.POUND)))),
                "guard-post-hold-down");
        assertThat(said.ratio()).isPresent();
        assertThat(Carrier.check(guarded(joints -> joints), BOOK, List.of()).cautions())
                .anyMatch(caution -> caution.text().contains("217 to 248 lb"));
    }

    @Test
    void a_post_that_finds_no_room_for_two_bolts_cannot_be_told() {
        Stair high = GuardedStairs.stair(
                "stock depth 8 in",
                build -> Rebuilt.with(
                        build,
                        "posts",
                        Rebuilt.with(build.posts(), "behindNosing", Optional.of(Length.inches(7, 1, 2)))));
        assertThat(next(find(high, "guard-post-hold-down"))).contains("two bolts");
    }

    @Test
    void rails_and_infill_are_checked_by_the_loads_of_the_book() {
        assertThat(find(guarded(joints -> joints), "guard-rail").ratio()).isPresent();
        assertThat(find(guarded(joints -> joints), "guard-infill").ratio()).isPresent();
        assertThat(verdict(find(guarded(joints -> joints), "guard-post-along"))).isEqualTo("none");
    }

    private static String loadRule(Stair stair, String id) {
        Carried carried = Carrier.check(stair, BOOK, List.of());
        return LoadRules.answered(Checker.check(stair, BOOK), stair, BOOK, carried).stream()
                .filter(finding -> finding.rule().id().equals(id))
                .map(finding -> finding.verdict().match(pass -> "pass", fail -> "fail", not -> "none", cannot -> "?"))
                .findFirst()
                .orElseThrow();
    }

    /** A rule about a load says what the checks of that load say: a fail is a fail, and what is open stays open. */
    @Test
    void the_rules_about_loads_are_answered() {
        assertThat(loadRule(StairFixtures.stair("risers 12; total rise 90 in"), "load-on-flight"))
                .isEqualTo("fail");
        assertThat(loadRule(StairFixtures.stair(SHORT), "load-on-flight")).isEqualTo("?");
        assertThat(loadRule(joined(SHORT, "hanger", Optional.of(new Reckoned(2000, Unit.POUND))), "load-on-flight"))
                .isEqualTo("?");
        assertThat(loadRule(
                        joined("brackets 32 in", "bracket", Optional.of(new Reckoned(900, Unit.POUND))),
                        "load-on-rail"))
                .isEqualTo("?");
        assertThat(loadRule(StairFixtures.stair("guard no"), "load-on-infill")).isEqualTo("none");
        assertThat(loadRule(guarded(joints -> joints), "load-on-infill")).isEqualTo("pass");
    }

    /** The book asks 40 psf; a job that states 20 may not pass the book's rule by it. */
    @Test
    void a_lighter_load_than_the_books_does_not_answer_its_rule() {
        Stair stair = StairFixtures.stair(SHORT);
        Strength said = Rebuilt.with(
                stair.brief().strength(),
                "loads",
                new Strength.Loads(Optional.of(new Reckoned(20, Unit.PSF)), Optional.empty(), Optional.empty()));
        Stair light = stair(SHORT, "strength", said);
        Carried carried = Carrier.check(light, BOOK, List.of());
        assertThat(LoadRules.answered(Checker.check(light, BOOK), light, BOOK, carried))
                .filteredOn(finding -> finding.rule().id().equals("load-on-flight"))
                .singleElement()
                .matches(finding -> finding.verdict() instanceof Verdict.CannotTell cannot
                        && cannot.missing().toString().contains("lighter load"));
    }

    @Test
    void a_support_halves_the_span_and_is_checked_itself() {
        String flight = "risers 12; total rise 90 in; foot concrete; setting outdoors";
        Support support = new Support(
                Length.inches(50), Length.inches(3, 1, 2), Length.inches(3, 1, 2), Optional.of(Length.inches(12)));
        Stair supported = stair(flight, "support", Optional.of(support));
        double before =
                find(StairFixtures.stair(flight), "stringer-bending").ratio().orElseThrow();
        double after = find(supported, "stringer-bending").ratio().orElseThrow();
        assertThat(after).isLessThan(before / 3);
        assertThat(verdict(find(supported, "support-post"))).isEqualTo("pass");
        assertThat(verdict(find(supported, "support-bearing"))).isEqualTo("pass");
        assertThat(verdict(find(supported, "support-ground"))).isEqualTo("pass");
        assertThat(Carrier.check(supported, BOOK, List.of()).cautions())
                .anyMatch(caution -> caution.text().contains("in tension"));
    }
}
