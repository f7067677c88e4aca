package pitchboard.railing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.GuardedStairs;
import pitchboard.Rebuilt;
import pitchboard.Samples;
import pitchboard.StairFixtures;
import pitchboard.brief.EdgeGuard;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.measure.Length;
import pitchboard.site.Hand;
import pitchboard.stair.Stair;

/**
 * The guard along an edge of 56 in beside the lawful stair: posts of 3 1/2 in at most 48 in apart, rails of 1 1/2 in, 42 in
 * high. All expected numbers are own arithmetic.
 */
final class EdgeLayoutTest {
    private static final EdgeGuard GUARD =
            new EdgeGuard(Length.inches(42), Optional.of(Length.inches(3, 1, 2)), Optional.empty());
    private static final Samples<Stair> STAIRS = Samples.buildableStairs(1_500);

    private static List<EdgeLayout> layouts(String edges, EdgeGuard along, UnaryOperator<GuardBuild> build) {
        Stair stair = GuardedStairs.stair(edges, build);
        Guard guard = Rebuilt.with(stair.brief().guard(), "edge", Optional.of(along));
        return EdgeLayout.find(new Stair(stair.site(), Rebuilt.with(stair.brief(), "guard", guard), stair.flight()));
    }

    private static EdgeLayout right(String length, UnaryOperator<GuardBuild> build) {
        List<EdgeLayout> layouts = layouts("edge left 0 in; edge right " + length, GUARD, build);
        assertThat(layouts).hasSize(1);
        return layouts.get(0);
    }

    private static EdgeLayout right(String length) {
        return right(length, UnaryOperator.identity());
    }

    /** 52 1/2 in from the first post to the last, in two bays of 26 1/4. */
    @Test
    void posts_stand_evenly_from_end_to_end() {
        EdgeLayout edge = right("56 in");
        assertThat(edge.hand()).isEqualTo(Hand.RIGHT);
        assertThat(edge.fronts()).containsExactly(Length.ZERO, Length.inches(26, 1, 4), Length.inches(52, 1, 2));
        assertThat(edge.clear()).isEqualTo(Length.inches(22, 3, 4));
    }

    /** One bay up to 48 in from middle to middle, two from there on. */
    @Test
    void the_greatest_spacing_decides_how_many() {
        assertThat(right("51 1/2 in").bays()).isEqualTo(1);
        assertThat(right("51 33/64 in").bays()).isEqualTo(2);
        assertThat(right("7 in").bays()).isZero();
        assertThat(right("7 in").fronts()).containsExactly(Length.ZERO);
        assertThat(right("7 1/64 in").bays()).isEqualTo(1);
    }

    @Test
    void an_edge_narrower_than_a_post_takes_none() {
        assertThat(layouts("edge left 0 in; edge right 3 in", GUARD, UnaryOperator.identity()))
                .isEmpty();
    }

    @Test
    void both_sides_are_laid_out_apart() {
        assertThat(layouts("edge left 40 in; edge right 56 in", GUARD, UnaryOperator.identity()))
                .extracting(EdgeLayout::hand, EdgeLayout::bays)
                .containsExactly(tuple(Hand.LEFT, 1), tuple(Hand.RIGHT, 2));
    }

    /** 22 3/4 in hold four balusters of 1 1/2 in: 16 3/4 in over five gaps. Three would leave 4 9/16. */
    @Test
    void every_bay_has_the_fewest_balusters_that_keep_the_ball_back() {
        Spacing spacing = right("56 in").spacing().orElseThrow();
        assertThat(spacing.count()).isEqualTo(4);
        assertThat(spacing.gap()).isEqualTo(Length.inches(3, 7, 20));
        assertThat(new Spacing(spacing.clear(), spacing.width(), 3).gap()).isEqualTo(Length.inches(4, 9, 16));
    }

    /** A ball of its own on the level: five balusters leave 15 1/4 in for six gaps. */
    @Test
    void the_level_may_have_a_ball_of_its_own() {
        EdgeGuard finer =
                new EdgeGuard(Length.inches(42), Optional.of(Length.inches(3)), Optional.of(Length.inches(3)));
        EdgeLayout edge = layouts("edge left 0 in; edge right 56 in", finer, UnaryOperator.identity())
                .get(0);
        assertThat(edge.spacing().orElseThrow().count()).isEqualTo(5);
        assertThat(edge.opening()).isEqualTo(Length.inches(3));
    }

    /** 42 − 1 1/2 − 1 1/2 − 3 1/2 in; down over 1 in of decking and 12 in of header. */
    @Test
    void heights_are_counted_from_the_finished_floor() {
        EdgeLayout edge = right("56 in");
        assertThat(edge.clearHeight()).isEqualTo(Length.inches(35, 1, 2));
        assertThat(edge.postLength()).isEqualTo(Length.inches(55));
        EdgeLayout setOn = right("56 in", build -> posts(build, "fixing", new Posts.Fixing.SetOn()));
        assertThat(setOn.postLength()).isEqualTo(Length.inches(42));
        EdgeLayout under = right("56 in", build -> posts(build, "top", Posts.Top.UNDER_RAIL));
        assertThat(under.postLength()).isEqualTo(Length.inches(53, 1, 2));
        assertThat(under.topRails()).containsExactly(Length.inches(56));
        assertThat(edge.topRails()).containsExactly(Length.inches(22, 3, 4), Length.inches(22, 3, 4));
    }

    private static GuardBuild posts(GuardBuild build, String name, Object value) {
        return Rebuilt.with(build, "posts", Rebuilt.with(build.posts(), name, value));
    }

    /** 35 1/2 in hold six boards of 3 1/2 in: 14 1/2 over seven gaps; five would leave 3 in. */
    @Test
    void boards_are_spread_over_the_height() {
        Infill boards = GuardedStairs.boards(Length.inches(3, 1, 2), Length.inches(3));
        Spacing spacing = right("56 in", build -> Rebuilt.with(build, "infill", boards))
                .spacing()
                .orElseThrow();
        assertThat(spacing.count()).isEqualTo(6);
        assertThat(spacing.gap()).isEqualTo(Length.inches(2, 1, 14));
    }

    /**
     * The header's face is 110 in from the first riser cut; the post before it begins at 106 1/2. The last tread's nosing
     * is at 98 in, its post 3 in behind it and 3 1/2 in wide.
     */
    @Test
    void the_gap_to_the_flight_s_guard_is_level_between_the_two_posts() {
        assertThat(right("56 in").gapToFlight()).contains(Length.inches(2));
        EdgeLayout early = right("56 in", build -> posts(build, "behindNosing", Optional.of(Length.ZERO)));
        assertThat(early.gapToFlight()).contains(Length.inches(5));
        assertThat(early.opening()).isEqualTo(Length.inches(5));
        assertThat(layouts("edge left 40 in; edge right 0 in", GUARD, UnaryOperator.identity())
                        .get(0)
                        .gapToFlight())
                .as("a wall is on the left")
                .isEmpty();
    }

    @Test
    void without_a_word_on_what_it_is_built_of_nothing_is_laid_out() {
        assertThat(EdgeLayout.find(StairFixtures.stair("edge right 56 in; edge guard 42 in")))
                .isEmpty();
        assertThat(layouts(
                        "edge left 0 in; edge right 56 in",
                        new EdgeGuard(Length.inches(42), Optional.empty(), Optional.empty()),
                        UnaryOperator.identity()))
                .isEmpty();
    }

    private static Stream<EdgeLayout> everyLayout() {
        return STAIRS.stream().flatMap(stair -> EdgeLayout.find(stair).stream());
    }

    @Test
    void posts_and_bays_fill_every_edge_exactly() {
        assertThat(everyLayout()).hasSizeGreaterThan(20).allSatisfy(edge -> {
            Length width = edge.build().posts().section().width();
            assertThat(edge.fronts()).hasSize(edge.posts());
            Length filled = width.times(edge.posts()).plus(edge.clear().times(edge.bays()));
            assertThat(filled).isEqualTo(edge.bays() == 0 ? width : edge.length());
        });
    }

    @Test
    void no_bay_is_wider_than_asked_for_and_one_bay_fewer_would_be() {
        assertThat(everyLayout().filter(edge -> edge.bays() > 1)).isNotEmpty().allSatisfy(edge -> {
            Length most = edge.build().posts().greatestSpacing();
            Length between = edge.length().minus(edge.build().posts().section().width());
            assertThat(edge.apart()).isLessThanOrEqualTo(most);
            assertThat(between.dividedBy(edge.bays() - 1L)).isGreaterThan(most);
        });
    }

    @Test
    void gaps_are_equal_and_one_piece_fewer_lets_the_ball_through() {
        assertThat(everyLayout().filter(edge -> edge.spacing().isPresent()))
                .isNotEmpty()
                .allSatisfy(edge -> {
                    Spacing spacing = edge.spacing().orElseThrow();
                    Length ball = edge.infill() instanceof Infill.Balusters balusters
                            ? balusters.ball()
                            : ((Infill.Boards) edge.infill()).ball();
                    Length sum = spacing.gap()
                            .times(spacing.count() + 1L)
                            .plus(spacing.width().times(spacing.count()));
                    assertThat(sum).isEqualTo(spacing.clear());
                    if (spacing.gap().isLessThan(ball) && spacing.count() > 0) {
                        Spacing fewer = new Spacing(spacing.clear(), spacing.width(), spacing.count() - 1);
                        assertThat(fewer.gap()).isGreaterThanOrEqualTo(ball);
                    }
                });
    }
}
