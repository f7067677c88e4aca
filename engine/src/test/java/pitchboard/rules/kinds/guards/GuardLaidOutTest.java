package pitchboard.rules.kinds.guards;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.GuardedStairs;
import pitchboard.Rebuilt;
import pitchboard.brief.GuardBuild.BottomRail;
import pitchboard.brief.Infill;
import pitchboard.measure.Length;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;
import pitchboard.source.Confidence;
import pitchboard.source.Edition;
import pitchboard.stair.Stair;

/** A guard that is laid out is judged by what it comes to. Bays of 26 1/2 and 36 1/2 in; own arithmetic. */
final class GuardLaidOutTest {
    private static final Clause CLAUSE = new Edition("a book", "1", "B").clause("1", Confidence.DERIVED);

    private static Rule opening(Length less) {
        return new GuardOpeningLessThan(CLAUSE, less);
    }

    private static Rule triangle(Length less) {
        return new GuardTriangleLessThan(CLAUSE, less);
    }

    private static Verdict.Fail fails(Rule rule, Stair stair) {
        return rule.judge(stair).match(pass -> null, fail -> fail, none -> null, unknown -> null);
    }

    private static Optional<Object> passes(Rule rule, Stair stair) {
        return rule.judge(stair)
                .match(
                        pass -> Optional.of(pass.measured()),
                        fail -> Optional.empty(),
                        none -> Optional.empty(),
                        u -> Optional.empty());
    }

    /** 36 1/2 in less six of 1 1/2 leave 27 1/2 for seven gaps. */
    @Test
    void the_opening_is_the_widest_gap_between_balusters() {
        Stair stair = GuardedStairs.filled(GuardedStairs.balusters(Length.inches(4)));
        assertThat(passes(opening(Length.inches(4)), stair)).contains(Length.inches(3, 13, 14));
    }

    /** Against 5 in it takes 5 balusters, 4 5/6 in apart; against 4 in it would take 6. */
    @Test
    void the_remedy_counts_the_balusters_that_help() {
        Stair stair = GuardedStairs.filled(GuardedStairs.balusters(Length.inches(5)));
        Verdict.Fail fail = fails(opening(Length.inches(4)), stair);
        assertThat(fail.measured()).isEqualTo(Length.inches(4, 5, 6));
        assertThat(fail.remedy().toString())
                .startsWith("use 6 balusters in the widest bay: the gap becomes ")
                .contains("3.929 in");
    }

    @Test
    void a_gap_of_just_the_limit_fails() {
        Length gap = Length.inches(3, 13, 14);
        Stair stair = GuardedStairs.filled(GuardedStairs.balusters(Length.inches(4)));
        assertThat(fails(opening(gap), stair).measured()).isEqualTo(gap);
        assertThat(passes(opening(gap.plus(Length.inches(0, 1, 64))), stair)).contains(gap);
    }

    /** Plumb 31 3/4 in are 25 2/5 in square to the slope: 3 boards of 5 1/2 in leave 8 9/10 for four gaps. */
    @Test
    void boards_are_judged_square_to_the_slope() {
        Stair stair = GuardedStairs.filled(GuardedStairs.boards(Length.inches(5, 1, 2), Length.inches(4)));
        assertThat(passes(opening(Length.inches(4)), stair)).contains(Length.inches(2, 9, 40));
    }

    @Test
    void boards_too_wide_for_their_gap_are_told_to_be_narrower() {
        Stair stair = GuardedStairs.filled(GuardedStairs.boards(Length.inches(11), Length.inches(1)));
        assertThat(fails(opening(Length.inches(0, 1, 2)), stair).remedy().toString())
                .startsWith("use narrower pieces");
    }

    @Test
    void panels_let_nothing_pass() {
        assertThat(passes(opening(Length.inches(4)), GuardedStairs.filled(new Infill.Panels(Length.inches(0, 1, 2)))))
                .contains(Length.ZERO);
    }

    private static Stair bottomRail(Length aboveNosings) {
        return GuardedStairs.stair(
                "boards open",
                build -> Rebuilt.with(
                        build, "bottomRail", new BottomRail(build.bottomRail().section(), aboveNosings)));
    }

    /** The 3-4-5 slope: half of 11 1/4 and four thirds of the height. 9/16 in leaves exactly 6. */
    @Test
    void the_triangle_is_judged_at_and_either_side_of_the_limit() {
        assertThat(passes(triangle(Length.inches(6)), bottomRail(Length.inches(0, 1, 2))))
                .contains(Length.inches(5, 23, 24));
        Verdict.Fail fail = fails(triangle(Length.inches(6)), bottomRail(Length.inches(0, 9, 16)));
        assertThat(fail.measured()).isEqualTo(Length.inches(6));
        assertThat(fail.remedy().toString()).startsWith("lower the bottom rail to 1/2\" above the nosings");
    }

    @Test
    void where_no_height_helps_the_triangle_is_to_be_closed() {
        assertThat(fails(triangle(Length.inches(4)), bottomRail(Length.inches(1)))
                        .remedy()
                        .toString())
                .startsWith("close the triangle on every step");
    }

    @Test
    void the_height_is_that_of_the_top_rail_over_every_nosing() {
        Stair stair = GuardedStairs.filled(GuardedStairs.balusters(Length.inches(4)));
        assertThat(passes(new GuardHeightAtLeast(CLAUSE, Length.inches(36)), stair))
                .contains(Length.inches(36));
        assertThat(fails(new GuardHeightAtLeast(CLAUSE, Length.inches(37)), stair)
                        .remedy()
                        .toString())
                .isEqualTo("raise the guard by 1\"");
    }

    @Test
    void where_both_sides_are_walls_what_is_stated_counts() {
        Stair stair = GuardedStairs.stair("right wall", build -> build);
        for (Rule rule : List.of(opening(Length.inches(4)), triangle(Length.inches(6)))) {
            assertThat(rule.judge(stair)).isInstanceOf(Verdict.CannotTell.class);
        }
    }
}
