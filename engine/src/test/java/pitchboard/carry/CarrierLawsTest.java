package pitchboard.carry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.RandomJobs;
import pitchboard.Rebuilt;
import pitchboard.brief.Brief;
import pitchboard.brief.Strength;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.carry.members.Bases;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.StringerCase;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.parts.StringerSpacing;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.rules.books.Books;
import pitchboard.stair.Buildable;
import pitchboard.stair.Stair;
import pitchboard.strength.LineLoad;
import pitchboard.strength.Section;

/** What holds for every stair, good or bad; statics and plain sense, no source needed. */
final class CarrierLawsTest {
    private static final int JOBS = 300;
    private static final Rulebook BOOK = Books.findByName("IRC 2021").orElseThrow();

    static Stream<Stair> stairs() {
        return LongStream.range(0, JOBS)
                .mapToObj(RandomJobs::of)
                .flatMap(asked -> RandomJobs.findAnyStair(asked).stream())
                .filter(stair -> new Buildable().objections(stair).isEmpty());
    }

    private static Carried check(Stair stair) {
        return Carrier.check(stair, BOOK, List.of());
    }

    private static Optional<Double> ratio(Carried carried, String id) {
        return carried.findings().stream()
                .filter(finding -> finding.id().equals(id))
                .flatMap(finding -> finding.ratio().stream())
                .findFirst();
    }

    private static void neverLess(Carried now, Carried then) {
        for (MemberFinding finding : now.findings()) {
            Optional<Double> other = ratio(then, finding.id());
            if (finding.ratio().isPresent() && other.isPresent()) {
                assertThat(other.get())
                        .as(finding.id())
                        .isGreaterThanOrEqualTo(finding.ratio().get() - 1e-6);
            }
        }
    }

    /** Loads that no book and no assumption reaches. */
    private static Stair heavier(Stair stair, double times) {
        Strength said = stair.brief().strength();
        Strength.Loads loads = new Strength.Loads(
                Optional.of(new Reckoned(200 * times, Unit.PSF)),
                Optional.of(new Reckoned(20 * times, Unit.PSF)),
                Optional.of(new Reckoned(600 * times, Unit.POUND)));
        return with(stair, Rebuilt.with(said, "loads", loads));
    }

    private static Stair with(Stair stair, Strength strength) {
        return with(stair, stair.brief().stringers(), strength);
    }

    private static Stair with(Stair stair, Stringers stringers, Strength strength) {
        Brief brief = Rebuilt.with(Rebuilt.with(stair.brief(), "stringers", stringers), "strength", strength);
        return new Stair(stair.site(), brief, stair.flight());
    }

    @ParameterizedTest
    @MethodSource("stairs")
    void more_load_never_helps(Stair stair) {
        neverLess(check(heavier(stair, 1)), check(heavier(stair, 1.5)));
    }

    @ParameterizedTest
    @MethodSource("stairs")
    void a_thicker_stringer_never_hurts(Stair stair) {
        StringerCase it = StringerCase.of(stair);
        Basis basis = Bases.limitStates("C24", Strength.Service.DRY);
        StringerCase deeper =
                it.bending(new Section(it.bends().breadth(), it.bends().depth().plus(Length.mm(10))));
        Bases.checks(basis, it)
                .worst()
                .then(now -> Bases.checks(basis, deeper).worst().map(then -> {
                    assertThat(then).isLessThanOrEqualTo(now);
                    return then;
                }))
                .orThrow();
    }

    /** The strips of all stringers make the whole width, and the outer two are alike. */
    @ParameterizedTest
    @MethodSource("stairs")
    void the_stringers_carry_the_whole_width_between_them(Stair stair) {
        StringerSpacing across = StringerSpacing.of(stair.brief());
        Length inner = StringerCase.takesInner(across).times(across.stringers().count() - 2L);
        assertThat(StringerCase.takesOuter(across).times(2).plus(inner))
                .isEqualTo(stair.brief().width());
    }

    /** Both ends together bear all the load over the plan. */
    @ParameterizedTest
    @MethodSource("stairs")
    void reactions_sum_to_the_load(Stair stair) {
        StringerCase it = StringerCase.of(stair);
        Basis basis = Bases.limitStates("C24", Strength.Service.DRY);
        LineLoad load = basis.loads().spread(it.takes());
        double all = load.over(stair.flight().totalRun()).newtons();
        double borne = it.supported()
                .map(spans -> spans.atFirstEnd(load)
                        .plus(spans.atSecondEnd(load))
                        .plus(spans.atMiddle(load))
                        .newtons())
                .orElseGet(() -> 2 * Bases.checks(basis, it).footReaction().newtons());
        assertThat(borne).isCloseTo(all, within(all * 1e-9));
        assertThat(load.nPerMm())
                .isCloseTo((1.35 * 0.5 + 1.5 * 2.0) / 1e3 * it.takes().approxMm(), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("stairs")
    void a_verdict_says_what_its_ratio_says(Stair stair) {
        for (MemberFinding finding : check(stair).findings()) {
            finding.ratio().ifPresent(ratio -> {
                if (finding.verdict() instanceof Verdict.Pass) {
                    assertThat(ratio).isLessThanOrEqualTo(1);
                } else {
                    assertThat(ratio).as(finding.id()).isGreaterThan(1);
                }
            });
        }
    }

    /** Every factor has its reason, every figure its unit, and every sentence is whole. */
    @ParameterizedTest
    @MethodSource("stairs")
    void nothing_is_left_unsaid(Stair stair) {
        Carried carried = check(stair);
        assertThat(carried.findings()).isNotEmpty().allSatisfy(finding -> {
            assertThat(finding.words().toString()).doesNotContain("{}").isNotBlank();
            finding.working()
                    .ifPresent(working -> assertThat(working.factors())
                            .allSatisfy(factor -> assertThat(factor.because()).isNotBlank()));
        });
        assertThat(carried.worksheet()).isNotEmpty();
    }

    /** What is said to help with more stringers does, when the stair is built so. */
    @ParameterizedTest
    @MethodSource("stairs")
    void more_stringers_help_as_was_said(Stair stair) {
        Carried carried = check(stair);
        Optional<WayOut> more = carried.waysOut().stream()
                .filter(way -> way.what().toString().startsWith("use ") && way.helps())
                .findFirst();
        more.ifPresent(way -> {
            int count = Integer.parseInt(way.what().toString().replaceAll("[^0-9]", ""));
            Stringers was = stair.brief().stringers();
            Stair built = with(
                    stair,
                    new Stringers(was.stock(), count, was.treadOverhang(), was.trim()),
                    stair.brief().strength());
            assertThat(ratio(check(built), "stringer-bending").orElseThrow()).isLessThanOrEqualTo(1);
            assertThat(ratio(check(built), "stringer-sag").orElseThrow()).isLessThanOrEqualTo(1);
            assertThat(ratio(check(built), "stringer-push").orElseThrow()).isLessThanOrEqualTo(1);
        });
    }

    /** Else the two laws about ways out would hold for nothing. */
    @Test
    void some_of_them_fail_and_can_be_helped() {
        List<Carried> failing = stairs().map(CarrierLawsTest::check)
                .filter(carried -> !carried.waysOut().isEmpty())
                .toList();
        assertThat(failing).hasSizeGreaterThan(10);
        assertThat(failing.stream().flatMap(carried -> carried.waysOut().stream()))
                .anyMatch(WayOut::helps)
                .anyMatch(way -> !way.helps())
                .anyMatch(way -> way.what().toString().startsWith("cut the stringers from boards"));
    }

    /** The same for deeper boards. */
    @ParameterizedTest
    @MethodSource("stairs")
    void deeper_boards_help_as_was_said(Stair stair) {
        check(stair).waysOut().stream()
                .filter(way -> way.what().toString().startsWith("cut the stringers from boards"))
                .findFirst()
                .ifPresent(way -> {
                    Stringers was = stair.brief().stringers();
                    Basis basis = Basis.of(stair, BOOK);
                    List<Length> depths = Stock.deeperThan(was.stock().depth(), basis).stream()
                            .map(StringerStock::depth)
                            .toList();
                    assertThat(depths.stream().map(depth -> ratioWithDepth(stair, depth)))
                            .anyMatch(ratio -> ratio.filter(r -> Math.abs(r - way.ratio()) < 1e-3)
                                    .isPresent());
                });
    }

    private static Optional<Double> ratioWithDepth(Stair stair, Length depth) {
        Stringers was = stair.brief().stringers();
        StringerStock stock = new StringerStock("deeper", depth, was.stock().thickness());
        Stair built = with(
                stair,
                new Stringers(stock, was.count(), was.treadOverhang(), was.trim()),
                stair.brief().strength());
        Carried carried = check(built);
        boolean pointCounts = stair.brief().strength().method() == Strength.Method.EUROCODE_5;
        return Stream.of("stringer-bending", "stringer-sag", "stringer-push", "stringer-shear", "stringer-point-load")
                .filter(id -> pointCounts || !id.equals("stringer-point-load"))
                .flatMap(id -> ratio(carried, id).stream())
                .reduce(Math::max);
    }
}
