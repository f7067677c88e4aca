package pitchboard.carry.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.Read;
import pitchboard.measure.Length;
import pitchboard.source.Practice;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.Resistance;
import pitchboard.strength.Section;
import pitchboard.strength.Stress;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Capacity;

/** Statics worked by hand; published values name their source. */
final class JointsTest {
    private static final Section POST = new Section(Length.inches(3, 1, 2), Length.inches(3, 1, 2));

    private static GuardPost post(double pounds, String rim) {
        return new GuardPost(
                Force.pounds(pounds), Length.inches(36), Length.inches(1), Read.inches(rim), Length.inches(2), POST);
    }

    /** Lever 36 + 1 + 2 = 39 in, arm the rim less 2 in at each edge: by hand. */
    @ParameterizedTest
    @CsvSource({
        "200, 7 1/4, 2600, 2400",
        "200, 9 1/4, 1686, 1486",
        "200, 11 1/4, 1276, 1076",
        "500, 7 1/4, 6500, 6000",
        "500, 9 1/4, 4214, 3714",
        "500, 11 1/4, 3190, 2690"
    })
    void the_bolts_of_a_post_make_a_couple(double pounds, String rim, double pull, double thrust) {
        GuardPost.Couple couple = post(pounds, rim).couple().orThrow();
        assertThat(couple.pull().pounds()).isCloseTo(pull, within(0.5));
        assertThat(couple.thrust().pounds()).isCloseTo(thrust, within(0.5));
    }

    /** A 4x4 has S 7.146 in³ (NDS 2018 Suppl. Table 1B): 200 × 39 / 7.146. */
    @ParameterizedTest
    @CsvSource({"200, 1092", "500, 2729"})
    void the_post_bends_at_its_upper_bolt(double pounds, double psi) {
        assertThat(post(pounds, "7 1/4").bending().psi()).isCloseTo(psi, within(0.6));
    }

    /** 1,800 lb corresponds to an arm of 4.9 in: enough in a 2x10 rim, not in a 2x8. */
    @Test
    void the_hold_down_of_the_guide_is_enough_from_a_deep_rim_on() {
        assertThat(holdDown("7 1/4").isEnough()).isFalse();
        assertThat(holdDown("9 1/4").isEnough()).isTrue();
        assertThat(holdDown("9 1/4").ratio()).isCloseTo(1685.7 / 1800, within(1e-4));
    }

    private static Utilisation holdDown(String rim) {
        return GuardPostChecks.holdDown(post(200, rim), GuardPostChecks.GUIDE_HOLD_DOWN, Units.POUNDS)
                .orThrow();
    }

    @Test
    void a_rim_without_room_for_two_bolts_cannot_be_told() {
        assertThat(post(200, "4").couple()).isInstanceOf(Answer.Unknown.class);
        assertThat(post(200, "4 1/16").couple()).isInstanceOf(Answer.Known.class);
        assertThat(post(0, "9 1/4").couple()).isInstanceOf(Answer.Unknown.class);
        assertThat(GuardPostChecks.holdDown(post(200, "9 1/4"), Force.NONE, Units.POUNDS))
                .isInstanceOf(Answer.Unknown.class);
    }

    /** Southern pine No. 2, 1100 psi at 2x4 and 4x4 size: 1092 of it. */
    @Test
    void the_bending_of_a_post_shows_its_working() {
        Resistance pine = new Resistance("Fb", "Fb′", "bending", Stress.psi(1100), List.of(), Practice.TRADE);
        Utilisation bending = GuardPostChecks.bending(post(200, "9 1/4"), pine, Units.POUNDS);
        assertThat(bending.ratio()).isCloseTo(1091.5 / 1100, within(1e-4));
        assertThat(bending.steps()).hasSize(4);
    }

    @Test
    void a_notched_post_is_warned_of_first() {
        assertThat(GuardPostChecks.cautions(Foothold.NOTCHED).get(0)).isEqualTo(Caution.NOTCHED_POST);
        assertThat(GuardPostChecks.cautions(Foothold.WHOLE))
                .doesNotContain(Caution.NOTCHED_POST)
                .hasSize(3);
    }

    /** 450 lb on clay: 0.30 sq ft, far below a pad of 12 by 36 in. 3 sq ft, 4 in thick: 150 lb. */
    @Test
    void a_pad_spreads_the_foot_over_the_ground() {
        Pad pad = new Pad(Length.inches(36), Length.inches(12), Length.inches(4));
        assertThat(pad.squareFeet()).isCloseTo(3, within(1e-9));
        assertThat(pad.weight().pounds()).isCloseTo(150, within(1e-9));
        assertThat(Pad.neededSquareFeet(Force.pounds(450), Soil.CLAY_OR_SILT)).isCloseTo(0.30, within(1e-9));
        Utilisation bearing = pad.bearing(Force.pounds(450), Soil.CLAY_OR_SILT, Units.POUNDS);
        assertThat(bearing.ratio()).isCloseTo(600.0 / 3 / 1500, within(1e-6));
    }

    /** IRC Table R401.4.1. */
    @ParameterizedTest
    @CsvSource({
        "CLAY_OR_SILT, 1500",
        "SAND_OR_SILTY_GRAVEL, 2000",
        "GRAVEL, 3000",
        "SEDIMENTARY_ROCK, 4000",
        "CRYSTALLINE_ROCK, 12000"
    })
    void the_ground_carries_what_is_presumed(Soil soil, double psf) {
        assertThat(soil.bearing().psf()).isCloseTo(psf, within(1e-9));
    }

    private static Capacity screw(double pounds) {
        Factor wet = new Factor("CM", "wet service", 0.5, "it is wet in use", Practice.TRADE);
        return new Capacity("Z", "one screw", Optional.empty(), Force.pounds(pounds), List.of(wet), Practice.TRADE);
    }

    @ParameterizedTest
    @CsvSource({"4, 1", "5, 0.8", "2, 2"})
    void screws_share_the_reaction_at_the_head(int count, double ratio) {
        Utilisation head =
                Head.sheared(Force.pounds(200), count, screw(100), Units.POUNDS).orThrow();
        assertThat(head.ratio()).isCloseTo(ratio, within(1e-6));
        assertThat(head.factors()).hasSize(1);
    }

    /** Pulled as hard as sheared, alike in both: √2 of the load, the same capacity. */
    @Test
    void a_pull_away_from_the_header_takes_its_share() {
        Utilisation head = Head.shearedAndPulled(
                        Force.pounds(200), Force.pounds(200), 4, screw(100), screw(100), Units.POUNDS)
                .orThrow();
        assertThat(head.ratio()).isCloseTo(Math.sqrt(2), within(1e-6));
        assertThat(Head.shearedAndPulled(Force.pounds(200), Force.NONE, 4, screw(100), screw(50), Units.POUNDS)
                        .orThrow()
                        .ratio())
                .isCloseTo(1, within(1e-6));
    }

    @Test
    void no_screw_and_no_kicker_cannot_be_told() {
        assertThat(Head.sheared(Force.pounds(200), 0, screw(100), Units.POUNDS)).isInstanceOf(Answer.Unknown.class);
        assertThat(Foot.slip(Force.pounds(50), 0, screw(100), Units.POUNDS)).isInstanceOf(Answer.Unknown.class);
        assertThat(new Foot(Length.ZERO, Length.inches(1, 1, 2)).bearing(Force.pounds(300), across(), Units.POUNDS))
                .isInstanceOf(Answer.Unknown.class);
    }

    private static Resistance across() {
        return new Resistance("Fc⊥", "Fc⊥′", "bearing", Stress.psi(405), List.of(), Practice.TRADE);
    }

    /** 450 lb on 1 1/2 by 4 in: 75 psi of 405. */
    @Test
    void the_foot_presses_on_its_seat() {
        Utilisation foot = new Foot(Length.inches(4), Length.inches(1, 1, 2))
                .bearing(Force.pounds(450), across(), Units.POUNDS)
                .orThrow();
        assertThat(foot.ratio()).isCloseTo(75.0 / 405, within(1e-6));
    }

    @Test
    void a_kicker_takes_the_push() {
        assertThat(Foot.slip(Force.pounds(100), 2, screw(100), Units.POUNDS)
                        .orThrow()
                        .ratio())
                .isCloseTo(1, within(1e-6));
    }

    @Test
    void a_head_that_touches_too_little_of_the_header_is_told() {
        assertThat(Head.contact(Length.inches(5), Length.inches(5))).isEmpty();
        assertThat(Head.contact(Length.inches(4, 15, 16), Length.inches(5))).hasSize(1);
        assertThat(Head.neededOfHanger(Force.pounds(276), Units.POUNDS).value())
                .isEqualTo(Units.POUNDS.show(Force.pounds(276)));
    }
}
