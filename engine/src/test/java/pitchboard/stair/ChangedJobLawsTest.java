package pitchboard.stair;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pitchboard.Read;
import pitchboard.Rebuilt;
import pitchboard.Samples;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.measure.ExactText;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.parts.StringerLayout;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;
import pitchboard.site.Measured;
import pitchboard.site.Rise;
import pitchboard.site.Site;

/** What must change, and what must not, when one thing about a job changes. On random stairs, good and bad. */
final class ChangedJobLawsTest {
    private static final Samples<Stair> STAIRS = Samples.anyStairs(2_000);
    private static final Length BIT = Length.inches(0, 7, 16);

    private static Stair onSole(Stair stair, Length thickness) {
        Brief brief = Rebuilt.with(stair.brief(), "foot", new FootDetail.SoleBoard(thickness, Length.inches(6)));
        return new Stair(stair.site(), brief, stair.flight());
    }

    private static Stair with(Stair stair, Site site) {
        Flight was = stair.flight();
        return new Stair(
                site,
                stair.brief(),
                new Flight(was.headJoin(), was.risers(), site.totalRise(stair.landing()), was.run()));
    }

    @Test
    void a_thicker_sole_board_takes_exactly_as_much_off_the_first_cut_and_nothing_off_the_steps() {
        STAIRS.hold(stair -> {
            Stair thin = onSole(stair, Length.inches(1));
            Stair thick = onSole(stair, Length.inches(1).plus(BIT));
            assertThat(thin.firstCut().minus(thick.firstCut())).isEqualTo(BIT);
            assertThat(thick.levelCut(stair.treads())).isEqualTo(thin.levelCut(stair.treads()));
            assertThat(new StringerShape(thick).throat()).isEqualTo(new StringerShape(thin).throat());
        });
    }

    /** The finished rise is kept: the present floor lies lower by the finish. */
    @Test
    void a_finish_still_to_come_below_makes_the_first_cut_exactly_as_much_higher() {
        STAIRS.hold(stair -> {
            Site lower = Rebuilt.with(
                    stair.site(), "lowerFinish", stair.site().lowerFinish().plus(BIT));
            Stair later = new Stair(lower, stair.brief(), stair.flight());
            assertThat(later.firstCut().minus(stair.firstCut())).isEqualTo(BIT);
            assertThat(later.levelCut(1)).isEqualTo(stair.levelCut(1));
        });
    }

    @Test
    void a_finish_below_lessens_every_rise_alike_and_lets_the_stringer_down_by_itself() {
        STAIRS.hold(stair -> {
            Site lower = Rebuilt.with(
                    stair.site(), "lowerFinish", stair.site().lowerFinish().plus(BIT));
            if (!lower.totalRise(stair.landing()).isPositive()) {
                return;
            }
            Stair later = with(stair, lower);
            Length lessForEach = BIT.dividedBy(stair.flight().risers());
            assertThat(stair.rise().minus(later.rise())).isEqualTo(lessForEach);
            assertThat(later.firstCut())
                    .isEqualTo(stair.firstCut().minus(lessForEach).plus(BIT));
        });
    }

    @Test
    void a_finish_above_changes_nothing_when_the_measured_floor_lies_lower_by_it() {
        STAIRS.hold(stair -> {
            if (!(stair.site().rise() instanceof Rise.AtLanding read)) {
                return;
            }
            Rise lower = new Rise.AtLanding(
                    new Measured(read.rise().value().minus(BIT), read.rise().certainty()));
            Site finishLater = Rebuilt.with(
                    Rebuilt.with(stair.site(), "rise", lower),
                    "upperFinish",
                    stair.site().upperFinish().plus(BIT));
            assertThat(with(stair, finishLater).flight()).isEqualTo(stair.flight());
        });
    }

    /** Every length is written down in the other unit and read again, as another crew would. */
    @Test
    void the_same_job_in_the_other_unit_is_the_same_stair() {
        STAIRS.hold(stair -> {
            Stair again = Rebuilt.mapLengths(stair, ChangedJobLawsTest::throughTheOtherUnit);
            assertThat(again).isEqualTo(stair);
            assertThat(new StringerShape(again).outline()).isEqualTo(new StringerShape(stair).outline());
        });
    }

    /** Inches are written in millimetres, which can take every tape line; what neither can write is left alone. */
    private static Length throughTheOtherUnit(Length length) {
        String written = ExactText.write(length, Tape.Units.MILLIMETRES);
        return written.contains("/") ? length : Read.length(written, Tape.Units.INCHES);
    }

    @Test
    void the_tape_changes_where_marks_are_rounded_and_nothing_else() {
        STAIRS.hold(stair -> {
            Brief brief = stair.brief();
            Tape other = brief.tape().isInches() ? Tape.MILLIMETRES : Tape.SIXTEENTHS;
            Stair onOther = new Stair(stair.site(), Rebuilt.with(brief, "tape", other), stair.flight());
            assertThat(StringerLayout.of(onOther).outline())
                    .isEqualTo(StringerLayout.of(stair).outline());
            assertThat(StringerLayout.of(onOther).boardNeeded())
                    .isEqualTo(StringerLayout.of(stair).boardNeeded());
        });
    }

    @Test
    void twice_as_large_in_everything_is_twice_as_large_in_everything() {
        STAIRS.hold(stair -> {
            Stair large = Rebuilt.mapLengths(stair, length -> length.times(2));
            StringerShape shape = new StringerShape(stair);
            assertThat(new StringerShape(large).outline()).isEqualTo(twice(shape.outline()));
            assertThat(new StringerShape(large).throat())
                    .isEqualTo(shape.throat().times(2));
            assertThat(new StringerShape(large).contactHeight())
                    .isEqualTo(shape.contactHeight().times(2));
            assertThat(large.spaceTaken()).isEqualTo(stair.spaceTaken().times(2));
            assertThat(large.headroom().map(Headroom::clear))
                    .isEqualTo(stair.headroom().map(headroom -> headroom.clear().times(2)));
        });
    }

    private static Outline twice(Outline outline) {
        return outline.mapped(corner -> Point.of(corner.x().times(2), corner.y().times(2)));
    }
}
