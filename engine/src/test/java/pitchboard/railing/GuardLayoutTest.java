package pitchboard.railing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.Rebuilt;
import pitchboard.StairFixtures;
import pitchboard.brief.Guard;
import pitchboard.brief.GuardBuild;
import pitchboard.brief.Handrail;
import pitchboard.brief.Infill;
import pitchboard.brief.Posts;
import pitchboard.brief.Section;
import pitchboard.measure.Length;
import pitchboard.plane.Point;
import pitchboard.stair.Stair;

/** A guard on twelve rises of 7 1/2 in and eleven runs of 10 in. All expected numbers are own arithmetic. */
final class GuardLayoutTest {
    private static final Posts POSTS = new Posts(
            new Section(Length.inches(3, 1, 2), Length.inches(3, 1, 2)),
            Length.inches(48),
            new Posts.Fixing.Lapped(),
            Optional.of(Length.inches(3)),
            Posts.Top.SQUARE);

    private static Stair stair(Posts posts) {
        GuardBuild build = new GuardBuild(
                posts,
                new Section(Length.inches(1, 1, 2), Length.inches(3, 1, 2)),
                new GuardBuild.BottomRail(
                        new Section(Length.inches(1, 1, 2), Length.inches(2, 1, 2)), Length.inches(1)),
                new Infill.Balusters(new Section(Length.inches(1, 1, 2), Length.inches(1, 1, 2)), Length.inches(4)));
        Guard guard = new Guard(
                true,
                Optional.of(Length.inches(36)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(build),
                Optional.empty());
        Stair plain = StairFixtures.stair("boards open");
        return new Stair(plain.site(), Rebuilt.with(plain.brief(), "guard", guard), plain.flight());
    }

    private static GuardLayout layout(Posts posts) {
        return GuardLayout.find(stair(posts)).orElseThrow();
    }

    /** Ten whole steps between the first and the last; four steps of 10 in are within 48, so three bays. */
    @Test
    void posts_are_spread_over_whole_steps() {
        assertThat(layout(POSTS).places().steps()).containsExactly(1, 4, 7, 11);
        assertThat(layout(POSTS).places().widest()).isEqualTo(Length.inches(40));
        assertThat(layout(Rebuilt.with(POSTS, "greatestSpacing", Length.inches(40)))
                        .places()
                        .steps())
                .containsExactly(1, 4, 7, 11);
        assertThat(layout(Rebuilt.with(POSTS, "greatestSpacing", Length.inches(39)))
                        .places()
                        .steps())
                .containsExactly(1, 3, 6, 8, 11);
    }

    @Test
    void a_spacing_of_less_than_a_run_cannot_be_kept() {
        PostPlaces places =
                layout(Rebuilt.with(POSTS, "greatestSpacing", Length.inches(9))).places();
        assertThat(places.steps()).hasSize(11);
        assertThat(places.keepSpacing()).isFalse();
    }

    @Test
    void a_post_without_a_place_stands_over_the_middle_of_the_run() {
        assertThat(layout(Rebuilt.with(POSTS, "behindNosing", Optional.empty()))
                        .places()
                        .behindNosing())
                .isEqualTo(Length.inches(3, 1, 4));
    }

    /** Bays of 30 − 3 1/2 and 40 − 3 1/2 in clear: 5 balusters and 7. */
    @Test
    void every_bay_has_its_balusters() {
        List<Filling> fillings = layout(POSTS).fillings();
        assertThat(fillings).hasSize(3);
        assertThat(((Filling.Balusters) fillings.get(0)).spacing())
                .isEqualTo(new Spacing(Length.inches(26, 1, 2), Length.inches(1, 1, 2), 5));
        assertThat(((Filling.Balusters) fillings.get(2)).spacing())
                .isEqualTo(new Spacing(Length.inches(36, 1, 2), Length.inches(1, 1, 2), 6));
        // 19 in over 6 gaps is less than 27 1/2 in over 7.
        assertThat(layout(POSTS).opening()).contains(Length.inches(3, 13, 14));
    }

    /** On a 3-4-5 slope a rail of 1 1/2 in is 1 7/8 in plumb: 36 − 1 7/8 − 1 − 1 7/8 in. */
    @Test
    void balusters_reach_from_rail_to_rail() {
        assertThat(layout(POSTS).clearHeight()).isEqualTo(Length.inches(31, 1, 4));
    }

    /** 26 1/2 in level are 33 1/8 in along a 3-4-5 slope. */
    @Test
    void rails_are_cut_between_posts_or_run_over_them() {
        assertThat(layout(POSTS).bottomRails().get(0)).isEqualTo(Length.inches(33, 1, 8));
        assertThat(layout(POSTS).topRails()).isEqualTo(layout(POSTS).bottomRails());
        GuardLayout over = layout(Rebuilt.with(POSTS, "top", Posts.Top.UNDER_RAIL));
        assertThat(over.topRails()).containsExactly(Length.inches(129, 3, 8));
        Post post = over.posts().get(0);
        assertThat(post.backTop().minus(post.frontTop())).isEqualTo(Length.inches(2, 5, 8));
        assertThat(post.aboveNosings(over.stair())).isEqualTo(Length.inches(34, 1, 8));
    }

    /** The straight edge covers 12 1/2 in a step; the front of every post is 3 in level, 3 3/4 in along it, behind. */
    @Test
    void posts_are_marked_from_a_straight_edge_on_the_nosings() {
        GuardLayout layout = layout(POSTS);
        assertThat(layout.posts().get(0).alongStraightEdge(layout.stair())).isEqualTo(Length.inches(3, 3, 4));
        assertThat(layout.posts().get(1).alongStraightEdge(layout.stair())).isEqualTo(Length.inches(41, 1, 4));
    }

    /**
     * Without riser boards a tread of 11 1/4 in reaches 1 1/4 in past the riser cut, so a post 3 in behind the nosing
     * stands 1 3/4 to 5 1/4 in behind the cut, over one level cut only.
     */
    @Test
    void a_lapped_post_finds_the_wood_between_the_level_cut_and_the_bottom_edge() {
        GuardLayout layout = layout(POSTS);
        Contact contact = layout.findContact(layout.posts().get(1)).orElseThrow();
        assertThat(contact.crossesRiser()).isFalse();
        assertThat(contact.width()).isEqualTo(Length.inches(3, 1, 2));
        // A board of 11 1/4 in is 14 1/16 in plumb; the bottom edge climbs 3 15/16 in over 5 1/4.
        assertThat(contact.height()).isEqualTo(Length.inches(10, 1, 8));
        assertThat(contact.boltArm()).isEqualTo(Length.inches(6, 1, 8));
    }

    @Test
    void a_post_across_a_riser_cut_is_told() {
        GuardLayout layout = layout(Rebuilt.with(POSTS, "behindNosing", Optional.of(Length.inches(9))));
        assertThat(layout.findContact(layout.posts().get(1)).orElseThrow().crossesRiser())
                .isTrue();
    }

    @Test
    void a_post_set_on_its_tread_stands_on_it() {
        GuardLayout layout = layout(Rebuilt.with(POSTS, "fixing", new Posts.Fixing.SetOn()));
        assertThat(layout.posts()).allSatisfy(post -> {
            assertThat(post.foot()).isEqualTo(layout.stair().nosing(post.step()).y());
            assertThat(layout.findContact(post)).isEmpty();
        });
    }

    /** Legs of 11 1/4 + 1 1/3 in and 3/4 of that: on a 3-4-5 slope the ball is half the longer one. */
    @Test
    void the_triangle_is_measured_to_the_riser_under_the_nosing() {
        assertThat(layout(POSTS).triangle().ball()).isEqualTo(Length.inches(6, 7, 24));
        assertThat(layout(POSTS).triangle().heightFor(Length.inches(6))).isEqualTo(Length.inches(0, 9, 16));
    }

    /** Eleven runs of 10 in are 137 1/2 in along a 3-4-5 slope. */
    @Test
    void a_handrail_runs_from_over_the_lowest_nosing_to_over_the_top_riser() {
        Stair stair = stair(POSTS);
        HandrailRun run = HandrailRun.find(stair).orElseThrow();
        assertThat(run.length()).isEqualTo(Length.inches(137, 1, 2));
        assertThat(run.line().get(0).x()).isEqualTo(stair.nosing(1).x());
        HandrailRun past =
                new HandrailRun(stair, new Handrail.Past(Length.inches(10), Length.inches(12)), run.height());
        assertThat(past.length()).isEqualTo(Length.inches(162));
        Point end = past.line().get(2);
        assertThat(end.y()).isEqualTo(stair.flight().totalRise().plus(run.height()));
    }

    /** With 7 1/2 in a step, 30 in are passed at the fifth; over ground 8 in lower, at the third. */
    @Test
    void the_first_step_that_is_too_high_is_found() {
        Stair level = StairFixtures.stair("fall beside 0 in");
        assertThat(new Falls(level).findFirstOver(Length.inches(30)).orElseThrow())
                .isEqualTo(new Falls.Drop(5, Length.inches(37, 1, 2)));
        Stair lower = StairFixtures.stair("fall beside 8 in");
        assertThat(new Falls(lower).findFirstOver(Length.inches(30)).orElseThrow())
                .isEqualTo(new Falls.Drop(3, Length.inches(30, 1, 2)));
        assertThat(new Falls(level).drops().get(11)).isEqualTo(new Falls.Drop(12, Length.inches(90)));
        assertThat(new Falls(level).findFirstOver(Length.inches(90))).isEmpty();
    }

    @Test
    void the_pitch_of_these_examples_is_that_of_three_four_five() {
        assertThat(stair(POSTS).pitch().degrees()).isCloseTo(36.87, within(0.005));
    }
}
