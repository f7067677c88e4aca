package pitchboard.rules.books;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.StairFixtures;
import pitchboard.measure.Tape;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** What a finding tells people to do helps: rule, a stair that fails, the advice, the stair that follows it. */
final class RemediesTest {
    private static final String IRC = """
            rise-at-most | total rise 105 in; risers 12 | use 14 risers: the rise becomes 7 1/2" | total rise 105 in; risers 14
            flight-rise-at-most | total rise 160 in; risers 21 | put a landing on the way: one flight may climb 151" | total rise 151 in; risers 20
            run-at-least | run 9 1/2 in | lengthen the run to 10": the flight then runs 110" | run 10 in
            top-run-at-least | overhang 3 in | cut the floor's edge back by 1" | overhang 2 in
            run-spread-at-most | overhang 0 in | bring the floor's edge to 2" past the face of the header, so that it reaches out like the treads | overhang 2 in
            open-riser-gap-less-than | boards open; overhang 1 in | close the risers with boards, or narrow each opening by a strip of at least 2 9/16" | boards 3/4 in
            nosing-at-least | treads 10 1/2 in | make the treads 10 3/4" wide, or the run 9 3/4" | treads 10 3/4 in
            nosing-at-least | treads 10 1/2 in | make the treads 10 3/4" wide, or the run 9 3/4" | treads 10 1/2 in; run 9 3/4 in
            nosing-at-most | treads 12 in | make the treads 11 1/4" wide, or the run 10 3/4" | treads 11 1/4 in
            nosing-at-most | treads 12 in | make the treads 11 1/4" wide, or the run 10 3/4" | treads 12 in; run 10 3/4 in
            floor-nosing-at-least | overhang 1 in | let the decking reach 1 1/2" past the face of the header | overhang 1 1/2 in
            floor-nosing-at-most | overhang 3 in | cut the decking back to 2" past the face of the header | overhang 2 in
            nosing-spread-at-most | overhang 1 in | bring the floor's edge to 2" past the face of the header, so that it reaches out like the treads | overhang 2 in
            nosing-radius-at-most | nosing rounded 1 in | take the radius down to 9/16" | nosing rounded 9/16 in
            nosing-bevel-at-most | nosing bevelled 1 in | take the bevel down to 1/2" | nosing bevelled 1/2 in
            clear-width-at-least | width 33 in | widen the flight by 3" | width 36 in
            width-beside-one-rail-at-least | reach 5 in | widen the flight by 1/2" | reach 5 in; width 36 1/2 in
            headroom-at-least | overhead 150 in from 20 in | raise it by 6 1/2", or cut it back by 8 11/16", away from the head | overhead 156 1/2 in from 20 in
            headroom-at-least | overhead 150 in from 20 in | raise it by 6 1/2", or cut it back by 8 11/16", away from the head | overhead 150 in from 28 11/16 in
            bottom-landing-depth-at-least | bottom depth 30 in | lengthen the bottom landing by 6" | bottom depth 36 in
            bottom-landing-width-at-least | bottom width 30 in | widen the bottom landing by 6" | bottom width 36 in
            bottom-landing-fall-at-most | bottom fall 1/20 | level the bottom landing until it falls 1 in 48 at most | bottom fall 1/48
            unrailed-risers-less-than | rails none | fit a handrail on one side at least | rails right
            handrail-height-at-least | rail height 32 in | raise the handrail by 2" | rail height 34 in
            handrail-height-at-most | rail height 40 in | lower the handrail by 2" | rail height 38 in
            handrail-projection-at-most | reach 5 in | bring the handrail closer to the side by 1/2" | reach 4 1/2 in
            handrail-clearance-at-least | clearance 1 in | move the handrail off the wall by 1/2" | clearance 1 1/2 in
            round-grip-at-most | grip round 3 in | use a rail at most 2" thick | grip round 2 in
            grip-perimeter-at-most | grip 1 1/2 in x 3 1/2 in | use a rail at most 6 1/4" around, or one with finger recesses | grip 1 1/2 in x 1 1/2 in
            unguarded-drop-at-most | guard no | put a guard on every open side | guard yes
            guard-height-at-least | guard height 30 in | raise the guard by 4" | guard height 34 in
            guard-opening-less-than | opening 5 in | leave openings of 4 5/16" at most | opening 4 5/16 in
            guard-triangle-less-than | triangle 6 in | lower the bottom rail until only a ball of 5 15/16" passes | triangle 5 15/16 in
            """;

    private static final String ENGLAND = """
            rise-at-least | risers 20 | use 17 risers: the rise becomes 152.941 mm | risers 17
            rise-at-most | risers 11 | use 12 risers: the rise becomes 216.667 mm | risers 12
            run-at-most | run 320 mm | shorten the run to 300 mm: the flight then runs 3600 mm | run 300 mm
            top-run-at-most | overhang 0 mm; treads 300 mm; run 290 mm | bring the floor's edge out by 20 mm | overhang 20 mm; treads 300 mm; run 290 mm
            pitch-at-most | run 220 mm | lengthen the run to 223 mm, or use 14 risers: the rise becomes 185.714 mm | run 223 mm
            pitch-at-most | run 220 mm | lengthen the run to 223 mm, or use 14 risers: the rise becomes 185.714 mm | run 220 mm; risers 14
            step-formula-at-least | risers 17; run 220 mm | lengthen the run to 245 mm, or use 15 risers: the rise becomes 173.333 mm | risers 17; run 245 mm
            step-formula-at-least | risers 17; run 220 mm | lengthen the run to 245 mm, or use 15 risers: the rise becomes 173.333 mm | risers 15; run 220 mm
            step-formula-at-most | risers 12; run 300 mm | shorten the run to 266 mm, or use 13 risers: the rise becomes 200 mm | risers 12; run 266 mm
            step-formula-at-most | risers 12; run 300 mm | shorten the run to 266 mm, or use 13 risers: the rise becomes 200 mm | risers 13; run 300 mm
            risers-in-line-at-most | risers 40; total rise 8000 mm | turn the stair after at most 36 risers | risers 36; total rise 7200 mm
            tread-overlap-at-least | boards open; treads 250 mm | make the treads 256 mm wide, or the run 234 mm | boards open; treads 256 mm
            clear-of-door-at-least | bottom door over; bottom clear 300 mm | hang the door the other way, or move the foot by 100 mm | bottom door over; bottom clear 400 mm
            one-rail-width-less-than | width 1200 mm | fit a handrail on each side, or make the flight 999 mm wide | width 1200 mm; rails both
            one-rail-width-less-than | width 1200 mm | fit a handrail on each side, or make the flight 999 mm wide | width 999 mm
            """;

    private static final String OTHERS = """
            OSHA 1910 | pitch-at-least | total rise 72 in; run 12 in | shorten the run to 10 3/8", or use 10 risers: the rise becomes 7.2 in | total rise 72 in; run 10 3/8 in
            OSHA 1910 | pitch-at-least | total rise 72 in; run 12 in | shorten the run to 10 3/8", or use 10 risers: the rise becomes 7.2 in | total rise 72 in; run 12 in; risers 10
            OSHA 1910 | top-clear-of-door-at-least | top door over; top clear 20 in | hang the door the other way, or give the top landing 2" more | top door over; top clear 22 in
            OSHA 1910 | unguarded-risers-less-than | guard no | put a guard on every open side | guard yes
            OSHA 1910 | guard-as-handrail-at-least | rails right; rail height 34 in; guard height 34 in | raise the guard by 2", or fit the handrail apart from it | rails right; rail height 34 in; guard height 42 in
            OSHA 1910 | guard-opening-at-most | opening 20 in | leave openings of 19" at most | opening 19 in
            OSHA 1926 | unrailed-rise-at-most | rails none; risers 3; total rise 33 in | fit a handrail on one side at least | rails left; risers 3; total rise 33 in
            OSHA 1926 | unguarded-rise-at-most | guard no; risers 3; total rise 33 in | put a guard on every open side | guard yes; risers 3; total rise 33 in
            ADA 2010 | closed-risers | boards open | close the risers with boards | boards 3/4 in
            ADA 2010 | handrail-sides-at-least | rails left | fit a handrail on each side | rails both
            NBC 2020 private | nosing-edge-at-least | tape millimetres; nosing square | round or bevel the nosings by 6 mm | tape millimetres; nosing bevelled 6 mm
            NBC 2020 private | nosing-edge-at-most | tape millimetres; nosing rounded 20 mm | round or bevel the nosings by 14 mm | tape millimetres; nosing rounded 14 mm
            NBC 2020 private | run-change-at-most | tape millimetres; treads 280 mm; run 255 mm; boards 20 mm; overhang 30 mm | bring the floor's edge to 45 mm past the face of the header, so that it reaches out like the treads | tape millimetres; treads 280 mm; run 255 mm; boards 20 mm; overhang 45 mm
            NBC 2020 private | stringer-depth-at-least | tape millimetres; stock depth 230 mm | cut the stringers from boards at least 235 mm deep | tape millimetres; stock depth 235 mm
            NBC 2020 private | stringer-throat-at-least | tape millimetres; total rise 2400 mm; run 255 mm; stock depth 235 mm | cut the stringers from boards at least 248 mm deep | tape millimetres; total rise 2400 mm; run 255 mm; stock depth 248 mm
            NBC 2020 private | stringer-thickness-at-least | tape millimetres; stock thickness 20 mm | cut the stringers from boards at least 38 mm thick | tape millimetres; stock thickness 38 mm
            NBC 2020 private | stringer-spacing-at-most | tape millimetres; boards open; width 1900 mm; stringers 2; stock thickness 38 mm | put in 4 stringers | tape millimetres; boards open; width 1900 mm; stringers 4; stock thickness 38 mm
            NBC 2020 private | tread-thickness-at-least | tape millimetres; thickness 20 mm | use treads at least 25 mm thick | tape millimetres; thickness 25 mm
            NCC 2022 private | flight-risers-at-least | tape millimetres; head flush; risers 1; total rise 180 mm | use 2 risers, or put a ramp here: fewer are overlooked | tape millimetres; head flush; risers 2; total rise 180 mm
            NCC 2022 private | flight-risers-at-most | risers 19; total rise 133 in | put a landing on the way, after at most 18 risers | risers 18; total rise 126 in
            NCC 2022 private | unrailed-rise-less-than | rails none | fit a handrail on one side at least | rails left
            NCC 2022 private | unguarded-drop-less-than | guard no | put a guard on every open side | guard yes
            AS 1657:2018 | tread-width-at-least | tape millimetres; treads 180 mm; run 215 mm | make the treads 185 mm wide | tape millimetres; treads 185 mm; run 215 mm
            AS 1657:2018 | tread-shortfall-at-most | tape millimetres; treads 220 mm; run 260 mm | make the treads 230 mm wide | tape millimetres; treads 230 mm; run 260 mm
            EN ISO 14122-3:2016 | clear-width-at-least | tape millimetres; width 700 mm | widen the flight by 100 mm | tape millimetres; width 800 mm
            """;

    /** Rules of comfort, which a book of advice does not let fail a stair. */
    private static final String COMFORT = """
            rise-plus-run-at-least | total rise 78 in; run 10 in | lengthen the run to 10 1/2", or use 11 risers: the rise becomes 7.091 in | total rise 78 in; run 10 1/2 in
            rise-plus-run-at-least | total rise 78 in; run 10 in | lengthen the run to 10 1/2", or use 11 risers: the rise becomes 7.091 in | total rise 78 in; run 10 in; risers 11
            rise-plus-run-at-most | run 12 in | shorten the run to 11 1/2", or use 13 risers: the rise becomes 6.923 in | run 11 1/2 in
            rise-plus-run-at-most | run 12 in | shorten the run to 11 1/2", or use 13 risers: the rise becomes 6.923 in | run 12 in; risers 13
            rise-times-run-at-least | total rise 78 in; run 10 in | lengthen the run to 10 13/16", or use 11 risers: the rise becomes 7.091 in | total rise 78 in; run 10 13/16 in
            rise-times-run-at-least | total rise 78 in; run 10 in | lengthen the run to 10 13/16", or use 11 risers: the rise becomes 7.091 in | total rise 78 in; run 10 in; risers 11
            rise-times-run-at-most | total rise 84 in; run 11 in | shorten the run to 10 11/16", or use 13 risers: the rise becomes 6.462 in | total rise 84 in; run 10 11/16 in
            rise-times-run-at-most | total rise 84 in; run 11 in | shorten the run to 10 11/16", or use 13 risers: the rise becomes 6.462 in | total rise 84 in; run 11 in; risers 13
            """;

    private static final String METRIC =
            "tape millimetres; risers 13; total rise 2600 mm; run 240 mm; treads 260 mm; boards 20 mm; overhang 40 mm; ";

    /** A case. */
    record Case(String book, String rule, String failing, String advice, String mended) {
        static Case of(String book, String base, String line) {
            String[] cells = line.split(" *\\| *", -1);
            return new Case(book, cells[0], base + cells[1], cells[2], base + cells[3]);
        }

        @Override
        public String toString() {
            return rule + ": " + advice;
        }
    }

    static Stream<Case> everyCase() {
        return Stream.of(
                        IRC.lines().map(line -> Case.of("IRC 2021", "", line)),
                        ENGLAND.lines().map(line -> Case.of("AD K 2013 private", METRIC, line)),
                        OTHERS.lines().map(RemediesTest::ofOther))
                .flatMap(Function.identity());
    }

    private static Case ofOther(String line) {
        String[] parts = line.split(" *\\| *", 2);
        return Case.of(parts[0], "", parts[1]);
    }

    static Stream<Case> everyAdvice() {
        return COMFORT.lines().map(line -> Case.of("no code, guidance only", "", line));
    }

    @ParameterizedTest
    @MethodSource("everyAdvice")
    void advice_is_said_with_numbers_and_helps(Case each) {
        Rulebook book = Books.findByName(each.book).orElseThrow();
        assertThat(verdict(each.rule, each.failing, book)).isInstanceOfSatisfying(Verdict.CannotTell.class, open -> {
            Tape tape = StairFixtures.stair(each.failing).brief().tape();
            assertThat(open.missing().write(tape, Tape.Style.PLAIN)).endsWith("; to keep to it, " + each.advice);
        });
        assertThat(verdict(each.rule, each.mended, book)).isInstanceOf(Verdict.Pass.class);
    }

    @ParameterizedTest
    @MethodSource("everyCase")
    void a_remedy_is_said_with_numbers_and_helps(Case each) {
        Rulebook book = Books.findByName(each.book).orElseThrow();
        assertThat(verdict(each.rule, each.failing, book)).isInstanceOfSatisfying(Verdict.Fail.class, fail -> {
            Tape tape = StairFixtures.stair(each.failing).brief().tape();
            assertThat(fail.remedy().write(tape, Tape.Style.PLAIN)).isEqualTo(each.advice);
        });
        assertThat(verdict(each.rule, each.mended, book)).isNotInstanceOf(Verdict.Fail.class);
    }

    private static Verdict verdict(String rule, String changes, Rulebook book) {
        Stair stair = StairFixtures.stair(changes);
        return Checker.check(stair, book).stream()
                .filter(finding -> finding.rule().id().equals(rule))
                .map(Finding::verdict)
                .findFirst()
                .orElseThrow();
    }
}
