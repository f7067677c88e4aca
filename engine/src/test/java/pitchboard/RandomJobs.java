package pitchboard;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchboard.brief.Brief;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.site.Site;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;

/**
 * Random jobs, each from its seed alone: both tapes, both heads, all fixings and feet, open and closed risers,
 * finishes, level ground and uneven. Most could be real; some are odd on purpose.
 */
public final class RandomJobs {
    private static final int MOST_RISERS = 25;

    private RandomJobs() {}

    /** A job, and the seed that makes it again. */
    public record Asked(long seed, Site site, Brief brief) {}

    public static Asked of(long seed) {
        Draws draws = new Draws(seed);
        // From a seed of its own, so that the stairs stay what they were before strength was asked for.
        RandomStrength strength = new RandomStrength(new Draws(seed * 37 + 5));
        Brief brief = new RandomBrief(draws, strength).brief();
        Site site = new RandomSite(draws, brief.tape()).site();
        // From a seed of its own, so that the stairs stay what they were before guards were laid out.
        Brief guarded = new RandomGuard(new Draws(seed * 31 + 17), brief.tape()).on(brief);
        // From a seed of its own, so that the stairs stay what they were before joints were asked for.
        Brief held = new RandomJoints(new Draws(seed * 41 + 3), brief.tape()).on(guarded);
        return new Asked(seed, site, held);
    }

    /** A stair of about common steps, good, bad, or impossible to build; empty where nothing climbs. */
    public static Optional<Stair> findAnyStair(Asked asked) {
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
