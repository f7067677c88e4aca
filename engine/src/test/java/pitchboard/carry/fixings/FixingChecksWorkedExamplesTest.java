package pitchboard.carry.fixings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchboard.Read;
import pitchboard.brief.Fasteners;
import pitchboard.carry.fixings.FixingChecks.Asked;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Pulled;
import pitchboard.strength.fasteners.Wetness;

/** What a job says of its fasteners, against printed values. */
final class FixingChecksWorkedExamplesTest {
    private static final double DOUGLAS_FIR = 0.50;
    private static final Length TWO_BY = Length.inches(1, 1, 2);

    private static Joint joint(Length inMain, Wetness wetness, Pulled.Grain grain, Optional<Length> room) {
        Answer<Double> wood = Answer.known(DOUGLAS_FIR);
        return new Joint(wood, inMain, grain, wood, TWO_BY, room, wetness);
    }

    private static Joint dry(Length inMain) {
        return joint(inMain, Wetness.DRY, Pulled.Grain.SIDE, Optional.empty());
    }

    private static Fasteners.Sized sized(Fasteners.Kind kind, Length diameter, Length length, int number) {
        return new Fasteners.Sized(kind, Optional.of(diameter), Optional.empty(), length, number);
    }

    private static Asked asked(double pounds, double away) {
        Force force = Force.pounds(pounds);
        Figure figure = Figure.given("R", "load", Units.POUNDS.show(force), Practice.ASKED_FOR);
        return new Asked("a load", figure, force, Force.pounds(away));
    }

    private static double ratio(Fasteners said, Joint joint, double pounds, double away) {
        return new FixingChecks(said, joint, Units.POUNDS)
                .holds(asked(pounds, away))
                .orThrow()
                .ratio();
    }

    /** NDS 2018 Table 12A: 1/2 in bolt, 1 1/2 in members of G 0.50, both across the grain: 220 lb; within its rounding. */
    @Test
    void a_bolt_through_two_boards_holds_what_the_table_prints() {
        Fasteners bolt = sized(Fasteners.Kind.BOLT, Length.inches(0, 1, 2), Length.inches(4), 1);
        assertThat(ratio(bolt, dry(TWO_BY), 220, 0)).isCloseTo(1, within(5.0 / 220));
    }

    /** Two bolts of 1/2 in and more hold less than twice one: they do not share evenly once they stand in one row. */
    @Test
    void more_fasteners_hold_more_but_never_more_than_their_number() {
        double before = Double.MAX_VALUE;
        for (int number = 1; number <= 8; number++) {
            Fasteners bolts = sized(Fasteners.Kind.BOLT, Length.inches(0, 1, 2), Length.inches(4), number);
            double now = ratio(bolts, dry(TWO_BY), 1000, 0);
            assertThat(now).isLessThan(before).isGreaterThanOrEqualTo(1000.0 / 220 / number - 0.15);
            before = now;
        }
    }

    /** NDS 2018 Table 12.2B: a no. 10 wood screw, G 0.50: 135 lb for each inch of thread; 1 1/2 in of it. */
    @Test
    void a_screw_is_pulled_out_as_the_table_prints() {
        Fasteners screw =
                new Fasteners.Sized(Fasteners.Kind.WOOD_SCREW, Optional.empty(), Optional.of(10), Length.inches(3), 1);
        Utilisation pulled = new FixingChecks(screw, dry(Length.inches(4)), Units.POUNDS)
                .pulls(asked(135 * 1.5, 0))
                .orThrow();
        assertThat(pulled.ratio()).isCloseTo(1, within(0.5 / 135));
    }

    /** NDS 2018 Table 11.3.3: wet in use 0.7, sheared and pulled alike. */
    @Test
    void wet_wood_holds_seven_tenths() {
        Fasteners lag = sized(Fasteners.Kind.LAG_SCREW, Length.inches(0, 3, 8), Length.inches(5), 2);
        Joint wet = joint(Length.inches(4), new Wetness(true, true), Pulled.Grain.SIDE, Optional.empty());
        assertThat(ratio(lag, dry(Length.inches(4)), 100, 30)).isCloseTo(0.7 * ratio(lag, wet, 100, 30), within(1e-6));
    }

    /** NDS 2018 12.5.2: 0.67 in end grain; and a bolt is not driven into it. */
    @Test
    void end_grain_holds_two_thirds() {
        Fasteners lag = sized(Fasteners.Kind.LAG_SCREW, Length.inches(0, 3, 8), Length.inches(5), 2);
        Joint end = joint(Length.inches(4), Wetness.DRY, Pulled.Grain.END, Optional.empty());
        assertThat(ratio(lag, dry(Length.inches(4)), 100, 0)).isCloseTo(0.67 * ratio(lag, end, 100, 0), within(1e-6));
    }

    /** 4 D, 3 D between and 1 1/2 D: two lines of two of 1/2 in need 4.25 in, and less is never clamped to fit. */
    @ParameterizedTest
    @CsvSource({"4 1/4, true", "4 1/8, false", "5 1/2, true"})
    void too_little_room_cannot_be_told(String room, boolean told) {
        Fasteners bolts = sized(Fasteners.Kind.BOLT, Length.inches(0, 1, 2), Length.inches(4), 4);
        Joint tight = joint(TWO_BY, Wetness.DRY, Pulled.Grain.SIDE, Optional.of(Read.inches(room)));
        Answer<Utilisation> holds = new FixingChecks(bolts, tight, Units.POUNDS).holds(asked(100, 0));
        assertThat(holds instanceof Answer.Known).isEqualTo(told);
    }

    @ParameterizedTest
    @ValueSource(strings = {"LAG_SCREW", "NAIL", "BOLT"})
    void one_too_short_cannot_be_told(String kind) {
        Fasteners stub = sized(Fasteners.Kind.valueOf(kind), Length.inches(0, 1, 4), Length.inches(1, 1, 4), 4);
        Answer<Utilisation> holds = new FixingChecks(stub, dry(Length.inches(4)), Units.POUNDS).holds(asked(100, 0));
        assertThat(holds)
                .isInstanceOfSatisfying(
                        Answer.Unknown.class,
                        unknown -> assertThat(unknown.because()).contains("this long"));
    }

    @Test
    void what_a_maker_states_is_counted_as_it_is() {
        Fasteners rated = new Fasteners.Rated(new Reckoned(250, Reckoned.Unit.POUND), 2);
        assertThat(ratio(rated, dry(TWO_BY), 400, 300)).isCloseTo(1, within(1e-9));
    }

    /** What is offered is enough, and one fewer is not. */
    @ParameterizedTest
    @CsvSource({"100", "430", "800"})
    void what_is_offered_is_just_enough(double pounds) {
        Joint joint = dry(Length.inches(4));
        String offered = Enough.across(joint, asked(pounds, 0.05 * pounds), Units.POUNDS)
                .orElseThrow()
                .toString();
        int number = Integer.parseInt(offered.substring(0, offered.indexOf(' ')));
        Length diameter = offered.contains("3/8") ? Length.inches(0, 3, 8) : Length.inches(0, 1, 2);
        assertThat(ratio(lags(diameter, number), joint, pounds, 0.05 * pounds)).isLessThanOrEqualTo(1);
        if (number > 2) {
            assertThat(ratio(lags(diameter, number - 1), joint, pounds, 0.05 * pounds))
                    .isGreaterThan(1);
        }
    }

    private static Fasteners lags(Length diameter, int number) {
        return sized(Fasteners.Kind.LAG_SCREW, diameter, Length.inches(4), number);
    }
}
