package pitchboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs.Asked;
import pitchboard.brief.Brief;
import pitchboard.brief.FootDetail;
import pitchboard.brief.HeadFixing;
import pitchboard.brief.HeadJoin;
import pitchboard.brief.Risers;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.site.Rise;
import pitchboard.site.Site;
import pitchboard.stair.Stair;

/** The laws are worth as much as the jobs they are tried on. */
final class RandomJobsTest {
    private static final int JOBS = 2_000;
    private static final Samples<Stair> STAIRS = Samples.buildableStairs(JOBS);

    @Test
    void the_same_seed_gives_the_same_job() {
        assertThat(Samples.jobs(200)).isEqualTo(Samples.jobs(200));
        assertThat(RandomJobs.of(1)).isNotEqualTo(RandomJobs.of(2));
    }

    @Test
    void a_seed_goes_on_meaning_the_same_job() {
        Asked job = RandomJobs.of(7);
        assertThat(job.brief().tape().graduation()).isEqualTo(Graduation.MILLIMETRE);
        assertThat(job.brief().width()).isEqualTo(Length.mm(1309));
        assertThat(job.site().head().depth()).isEqualTo(Length.mm(149));
    }

    @Test
    void a_quarter_of_the_stairs_can_be_built() {
        assertThat(STAIRS.all()).hasSizeGreaterThan(JOBS / 4);
    }

    /** Every head with every fixing, foot and kind of riser, on both tapes, on level and on uneven ground. */
    @Test
    void every_way_to_build_is_among_the_stairs_that_can_be_built() {
        Set<List<Object>> ways = STAIRS.stream().map(RandomJobsTest::way).collect(Collectors.toSet());
        assertThat(ways).hasSize(HeadJoin.values().length * 4 * 3 * 2);
        assertThat(STAIRS.stream().map(RandomJobsTest::tapeAndGround))
                .contains(List.of(true, true), List.of(true, false), List.of(false, true), List.of(false, false));
    }

    @Test
    void odd_cases_are_among_them() {
        assertThat(STAIRS.stream())
                .anyMatch(stair -> stair.treads() == 1)
                .anyMatch(stair -> stair.seat().isNegative())
                .anyMatch(stair -> stair.projection().isZero())
                .anyMatch(stair -> stair.riserThickness().isMoreThan(Length.mm(20)));
    }

    private static List<Object> way(Stair stair) {
        Brief brief = stair.brief();
        return List.of(
                brief.headJoin(),
                brief.headFixing().getClass().asSubclass(HeadFixing.class),
                brief.foot().getClass().asSubclass(FootDetail.class),
                brief.risers() instanceof Risers.Open);
    }

    private static List<Object> tapeAndGround(Stair stair) {
        Site site = stair.site();
        return List.of(stair.brief().tape().isInches(), site.rise() instanceof Rise.AtLanding);
    }
}
