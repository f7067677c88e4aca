package pitchboard.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchboard.measure.Length;

/** What holds for every beam on two supports; statics, no source needed. */
final class SimpleBeamLawsTest {
    private static final int BEAMS = 200;
    private static final Stress MODULUS = Stress.psi(1_400_000);

    /** One beam with its loads. */
    record Loaded(Length span, LineLoad spread, Force point, Length away, Section section) {}

    static Stream<Loaded> beams() {
        Random random = new Random(20270514);
        return IntStream.range(0, BEAMS).mapToObj(i -> {
            Length span = Length.mm(200 + random.nextInt(6000));
            return new Loaded(
                    span,
                    new LineLoad(0.05 + random.nextDouble() * 5),
                    new Force(1 + random.nextInt(5000)),
                    span.times(random.nextInt(101)).dividedBy(100),
                    new Section(Length.mm(20 + random.nextInt(100)), Length.mm(30 + random.nextInt(300))));
        });
    }

    @ParameterizedTest
    @MethodSource("beams")
    void reactions_sum_to_the_load(Loaded beam) {
        SimpleBeam simple = new SimpleBeam(beam.span());
        Force left = simple.reaction(beam.point(), beam.away());
        Force right = simple.reaction(beam.point(), beam.span().minus(beam.away()));
        assertThat(left.plus(right).newtons()).isCloseTo(beam.point().newtons(), within(1e-6));
        assertThat(simple.endReaction(beam.spread()).times(2).newtons())
                .isCloseTo(beam.spread().over(beam.span()).newtons(), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("beams")
    void mid_span_is_the_worst_place(Loaded beam) {
        SimpleBeam simple = new SimpleBeam(beam.span());
        assertThat(simple.momentUnder(beam.point(), beam.away()).nMm())
                .isLessThanOrEqualTo(simple.moment(beam.point()).nMm() * (1 + 1e-12));
        assertThat(simple.momentAt(beam.spread(), beam.away()).nMm())
                .isLessThanOrEqualTo(simple.moment(beam.spread()).nMm() * (1 + 1e-12));
    }

    @ParameterizedTest
    @MethodSource("beams")
    void more_load_never_helps_and_more_depth_never_hurts(Loaded beam) {
        SimpleBeam simple = new SimpleBeam(beam.span());
        Section deeper =
                new Section(beam.section().breadth(), beam.section().depth().plus(Length.mm(5)));
        LineLoad heavier = beam.spread().times(1.2);
        assertThat(simple.deflectionMm(heavier, MODULUS, beam.section()))
                .isGreaterThan(simple.deflectionMm(beam.spread(), MODULUS, beam.section()));
        assertThat(simple.deflectionMm(beam.spread(), MODULUS, deeper))
                .isLessThan(simple.deflectionMm(beam.spread(), MODULUS, beam.section()));
        assertThat(MemberChecks.bending(simple.moment(heavier), beam.section()).nPerMm2())
                .isGreaterThan(MemberChecks.bending(simple.moment(beam.spread()), beam.section())
                        .nPerMm2());
        assertThat(MemberChecks.bending(simple.moment(beam.spread()), deeper).nPerMm2())
                .isLessThan(MemberChecks.bending(simple.moment(beam.spread()), beam.section())
                        .nPerMm2());
    }

    /** The longest span is the one at which the check is just met. */
    @ParameterizedTest
    @MethodSource("beams")
    void the_longest_span_is_where_the_check_is_just_met(Loaded beam) {
        Stress bending = Stress.psi(900);
        Length longest = Spans.byBending(beam.spread(), beam.section(), bending);
        Moment moment = new SimpleBeam(longest).moment(beam.spread());
        assertThat(MemberChecks.bending(moment, beam.section()).over(bending)).isCloseTo(1, within(1e-3));
        Length stiffest = Spans.byDeflection(beam.spread(), beam.section(), MODULUS, 360);
        double deflection = new SimpleBeam(stiffest).deflectionMm(beam.spread(), MODULUS, beam.section());
        assertThat(deflection * 360 / stiffest.approxMm()).isCloseTo(1, within(1e-3));
    }

    @Test
    void a_beam_has_a_span_and_a_section_has_sides() {
        assertThatThrownBy(() -> new SimpleBeam(Length.ZERO)).hasMessageContaining("span above zero");
        assertThatThrownBy(() -> new Section(Length.ZERO, Length.inches(5))).hasMessageContaining("depth");
        assertThatThrownBy(() -> Spans.byShear(LineLoad.NONE, new Section(Length.mm(1), Length.mm(1)), MODULUS))
                .hasMessageContaining("load above zero");
        assertThatThrownBy(() -> new SimpleBeam(Length.inches(10)).momentUnder(Force.pounds(1), Length.inches(11)))
                .hasMessageContaining("on it");
    }
}
