package pitchboard.railing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.Rebuilt;
import pitchboard.Samples;
import pitchboard.brief.Infill;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Marked;
import pitchboard.site.Side;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** What holds for the guard of every stair. */
final class GuardLayoutLawsTest {
    private static final Samples<Stair> STAIRS = Samples.buildableStairs(1_500);

    private static Stream<GuardLayout> layouts() {
        return STAIRS.stream().map(GuardLayout::find).flatMap(Optional::stream);
    }

    private static Stream<Spacing> spacings(GuardLayout layout) {
        return layout.fillings().stream().flatMap(filling -> {
            if (filling instanceof Filling.Balusters balusters) {
                return Stream.of(balusters.spacing());
            }
            return filling instanceof Filling.Boards boards ? Stream.of(boards.spacing()) : Stream.empty();
        });
    }

    private static Length ball(GuardLayout layout) {
        return layout.build().infill() instanceof Infill.Balusters balusters
                ? balusters.ball()
                : ((Infill.Boards) layout.build().infill()).ball();
    }

    @Test
    void the_stairs_tried_here_have_guards_of_every_kind() {
        assertThat(layouts().map(layout -> layout.build().infill().getClass()).distinct())
                .hasSize(3);
        assertThat(layouts()
                        .map(layout -> layout.build().posts().fixing().getClass())
                        .distinct())
                .hasSize(3);
    }

    @Test
    void equal_gaps_and_widths_sum_to_the_clear_length_exactly() {
        assertThat(layouts().flatMap(GuardLayoutLawsTest::spacings)).allSatisfy(spacing -> {
            Length sum = spacing.gap()
                    .times(spacing.count() + 1L)
                    .plus(spacing.width().times(spacing.count()));
            assertThat(sum).isEqualTo(spacing.clear());
            assertThat(spacing.nearEdge(spacing.count() + 1)).isEqualTo(spacing.clear());
        });
    }

    @Test
    void no_ball_passes_and_one_piece_fewer_lets_it_pass() {
        layouts()
                .forEach(layout -> spacings(layout).forEach(spacing -> {
                    Length ball = ball(layout);
                    boolean oneMoreFits =
                            spacing.width().times(spacing.count() + 1L).isAtMost(spacing.clear());
                    assertThat(spacing.gap().isLessThan(ball) || !oneMoreFits).isTrue();
                    if (spacing.count() > 0) {
                        Spacing fewer = new Spacing(spacing.clear(), spacing.width(), spacing.count() - 1);
                        assertThat(fewer.gap()).isGreaterThanOrEqualTo(ball);
                    }
                }));
    }

    @Test
    void every_mark_is_rounded_once_from_the_one_datum() {
        layouts().flatMap(GuardLayoutLawsTest::spacings).forEach(spacing -> {
            List<Marked> marks = spacing.marks(Graduation.SIXTEENTH_INCH);
            Length half = Graduation.SIXTEENTH_INCH.step().dividedBy(2);
            for (int i = 0; i < marks.size(); i++) {
                assertThat(marks.get(i).exact()).isEqualTo(spacing.nearEdge(i + 1));
                assertThat(marks.get(i).givenUp().abs()).isLessThanOrEqualTo(half);
            }
        });
    }

    @Test
    void posts_stand_at_foot_and_head_and_evenly_between_them() {
        layouts().forEach(layout -> {
            List<Integer> steps = layout.places().steps();
            assertThat(steps.get(0)).isEqualTo(1);
            if (steps.size() > 1) {
                assertThat(steps.get(steps.size() - 1)).isEqualTo(layout.stair().treads());
            }
            assertThat(IntStream.range(1, steps.size())
                            .map(i -> steps.get(i) - steps.get(i - 1))
                            .distinct()
                            .count())
                    .isLessThanOrEqualTo(2);
        });
    }

    @Test
    void no_spacing_passes_the_greatest_unless_a_single_step_does() {
        layouts().forEach(layout -> {
            PostPlaces places = layout.places();
            assertThat(places.keepSpacing() || places.widest().isAtMost(oneStepOrOneBay(layout)))
                    .isTrue();
        });
    }

    /** What cannot be less: one run, or as many as a post is wide. */
    private static Length oneStepOrOneBay(GuardLayout layout) {
        Length run = layout.stair().run();
        long fewest = layout.build().posts().section().width().wholeTimes(run) + 1;
        return run.times(2 * fewest);
    }

    @Test
    void every_post_stands_at_the_same_place_in_its_step() {
        layouts()
                .forEach(layout -> assertThat(layout.posts())
                        .extracting(post -> post.behindNosing(layout.stair()))
                        .containsOnly(layout.places().behindNosing()));
    }

    @Test
    void all_lines_are_the_same_height_over_every_nosing() {
        layouts()
                .forEach(layout -> Stream.of(layout.top(), layout.topUnderside(), layout.bottomTop())
                        .forEach(line -> assertThat(line.overNosings()).containsOnly(line.above())));
    }

    @Test
    void bays_and_posts_together_reach_from_the_first_post_to_the_last() {
        layouts().forEach(layout -> {
            List<Post> posts = layout.posts();
            Length level = posts.get(posts.size() - 1).back().minus(posts.get(0).front());
            Length sum = posts.stream()
                    .map(Post::width)
                    .reduce(Length::plus)
                    .orElseThrow()
                    .plus(layout.bays().stream().map(Bay::clear).reduce(Length.ZERO, Length::plus));
            assertThat(sum).isEqualTo(level);
            assertThat(layout.bays()).allMatch(bay -> bay.clear().isPositive());
        });
    }

    @Test
    void a_post_on_the_stringer_hangs_nowhere_below_it() {
        layouts()
                .forEach(layout -> layout.posts()
                        .forEach(post -> layout.findContact(post).ifPresent(contact -> {
                            StringerShape shape = new StringerShape(layout.stair());
                            Length end = Length.min(post.back(), layout.stair().headerFace());
                            assertThat(post.foot()).isGreaterThanOrEqualTo(shape.bottomEdge(end));
                            assertThat(post.foot().plus(contact.height()))
                                    .isLessThanOrEqualTo(layout.stair().levelCut(post.step() + 1));
                        })));
    }

    @Test
    void both_sides_of_a_flight_have_the_same_guard() {
        STAIRS.stream().filter(stair -> GuardLayout.find(stair).isPresent()).forEach(stair -> {
            GuardLayout left =
                    GuardLayout.find(sided(stair, Side.OPEN, Side.WALL)).orElseThrow();
            GuardLayout right =
                    GuardLayout.find(sided(stair, Side.WALL, Side.OPEN)).orElseThrow();
            assertThat(left.posts()).isEqualTo(right.posts());
            assertThat(left.fillings()).isEqualTo(right.fillings());
            assertThat(left.sides()).isEqualTo(1);
        });
    }

    private static Stair sided(Stair stair, Side left, Side right) {
        return new Stair(
                Rebuilt.with(Rebuilt.with(stair.site(), "leftSide", left), "rightSide", right),
                stair.brief(),
                stair.flight());
    }

    @Test
    void the_circle_in_the_triangle_touches_the_rail() {
        layouts().forEach(layout -> {
            Stair stair = layout.stair();
            Length ball = layout.triangle().ball();
            Length radius = ball.dividedBy(2);
            Length depth = Length.max(stair.run(), stair.brief().treads().width());
            // Square from the rail's underside to the middle of the circle, which stands on the tread at the riser.
            Length railOver = stair.pitch()
                    .riseOver(depth.minus(radius))
                    .plus(layout.triangle().aboveNosings());
            double square = stair.pitch().cosTimes(railOver.minus(radius)).approxMm();
            assertThat(square).isCloseTo(radius.approxMm(), org.assertj.core.api.Assertions.within(1e-6));
            assertThat(layout.triangle().heightFor(ball).approxMm())
                    .isCloseTo(
                            layout.triangle().aboveNosings().approxMm(), org.assertj.core.api.Assertions.within(1e-6));
        });
    }
}
