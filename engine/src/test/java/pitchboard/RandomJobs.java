package pitchboard;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import pitchboard.brief.Brief;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.site.Site;
import pitchboard.stair.Buildable;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;

/**
 * Random jobs, each from its seed alone: both tapes, both heads, all fixings and feet, open and closed risers,
 * finishes, level ground and uneven. Most could be real; some are odd on purpose.
 */
public final class RandomJobs {
    private static final Buildable WOOD = new Buildable();
    private static final int MOST_RISERS = 25;

    private RandomJobs() {}

    /** A job, and the seed that makes it again. */
    public record Asked(long seed, Site site, Brief brief) {}

    public static Asked of(long seed) {
        Draws draws = new Draws(seed);
        Brief brief = new RandomBrief(draws).brief();
        return new Asked(seed, new RandomSite(draws, brief.tape()).site(), brief);
    }

    /** The jobs of the seeds 0, 1, 2 ... */
    public static Stream<Asked> first(int count) {
        return LongStream.range(0, count).mapToObj(RandomJobs::of);
    }

    /** A stair for each of the first jobs that climbs at all: good, bad, or impossible to build. */
    public static Stream<Stair> anyStairs(int jobs) {
        return first(jobs).flatMap(asked -> findAnyStair(asked).stream());
    }

    /** Those of {@link #anyStairs} that wood and space allow. */
    public static Stream<Stair> buildableStairs(int jobs) {
        return anyStairs(jobs).filter(stair -> WOOD.objections(stair).isEmpty());
    }

    private static Optional<Stair> findAnyStair(Asked asked) {
        Draws draws = new Draws(~asked.seed());
        Length run = draws.onTape(asked.brief().tape(), 180, 360);
        Length wanted = draws.onTape(asked.brief().tape(), 110, 240);
        int fewest = asked.brief().headJoin() == HeadJoin.FLUSH ? 1 : 2;
        return IntStream.rangeClosed(fewest, MOST_RISERS)
                .mapToObj(risers -> findStair(asked, risers, run))
                .flatMap(Optional::stream)
                .min(Comparator.comparing(stair -> stair.rise().minus(wanted).abs()));
    }

    private static Optional<Stair> findStair(Asked asked, int risers, Length run) {
        Brief brief = asked.brief();
        int treads = brief.headJoin() == HeadJoin.FLUSH ? risers : risers - 1;
        Length rise =
                asked.site().totalRise(run.times(treads).plus(brief.risers().inFront()));
        return Optional.of(rise)
                .filter(Length::isPositive)
                .map(climb -> new Stair(asked.site(), brief, new Flight(brief.headJoin(), risers, climb, run)));
    }
}
