package pitchboard.stair;

import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchboard.brief.Brief;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.site.Site;

/**
 * The flights worth trying: rises a leg can climb, runs a foot can stand on. Wider than any code, so that near misses
 * show up too. A number of risers or a run that was asked for is tried in any case.
 */
final class Candidates {
    private static final Length LOWEST_RISE = Length.inches(3);
    private static final Length HIGHEST_RISE = Length.inches(14);
    private static final Length SHORTEST_RUN = Length.inches(7);
    private static final Length LONGEST_RUN = Length.inches(16);
    private static final int MOST_RISERS = 60;

    private final Site site;
    private final Brief brief;
    private final NavigableSet<Length> roundRuns;

    private Candidates(Site site, Brief brief) {
        this.site = site;
        this.brief = brief;
        this.roundRuns = roundRuns(brief);
    }

    /** By growing number of risers. */
    static Stream<Stair> of(Site site, Brief brief) {
        Candidates candidates = new Candidates(site, brief);
        return candidates.riserCounts().boxed().flatMap(candidates::withRisers);
    }

    private IntStream riserCounts() {
        IntStream beyond = brief.wishes().risers().filter(wished -> wished > MOST_RISERS).stream()
                .mapToInt(Integer::intValue);
        return IntStream.concat(IntStream.rangeClosed(1, MOST_RISERS), beyond);
    }

    private Stream<Stair> withRisers(int risers) {
        if (treads(risers) < 1 || !couldClimb(risers)) {
            return Stream.empty();
        }
        Stream<Length> filling = fillingRun(risers).filter(run -> !roundRuns.contains(run)).stream();
        return Stream.concat(roundRuns.stream(), filling).flatMap(run -> stair(risers, run).stream());
    }

    private int treads(int risers) {
        return brief.headJoin() == HeadJoin.FLUSH ? risers : risers - 1;
    }

    /** A look at the highest and the lowest ground the foot could land on, so that hopeless counts cost little. */
    private boolean couldClimb(int risers) {
        Length nearest = landing(risers, roundRuns.first());
        Length farthest = landing(risers, roundRuns.last());
        Stream<Length> bendsBetween =
                site.rise().bends().stream().filter(bend -> bend.isMoreThan(nearest) && bend.isLessThan(farthest));
        NavigableSet<Length> rises = Stream.concat(Stream.of(nearest, farthest), bendsBetween)
                .map(site::totalRise)
                .collect(Collectors.toCollection(TreeSet::new));
        boolean canClimb = rises.last().isAtLeast(LOWEST_RISE.times(risers))
                && rises.first().isAtMost(HIGHEST_RISE.times(risers));
        return canClimb || isWished(risers);
    }

    private boolean isWished(int risers) {
        return brief.wishes().risers().map(wished -> wished == risers).orElse(false);
    }

    private Length landing(int risers, Length run) {
        return run.times(treads(risers)).plus(brief.risers().inFront());
    }

    /** The landing point moves with the run, and on a slope the rise moves with it. */
    private Optional<Stair> stair(int risers, Length run) {
        Length totalRise = site.totalRise(landing(risers, run));
        boolean climbable =
                totalRise.isAtLeast(LOWEST_RISE.times(risers)) && totalRise.isAtMost(HIGHEST_RISE.times(risers));
        if (!climbable && !(isWished(risers) && totalRise.isPositive())) {
            return Optional.empty();
        }
        return Optional.of(new Stair(site, brief, new Flight(brief.headJoin(), risers, totalRise, run)));
    }

    /** Round runs of the tape, and what was wished for. */
    private static NavigableSet<Length> roundRuns(Brief brief) {
        Length step = brief.tape().isInches() ? Length.inches(0, 1, 4) : Length.mm(5);
        NavigableSet<Length> runs = new TreeSet<>();
        long first = SHORTEST_RUN.wholeTimes(step);
        for (Length run = step.times(first); run.isAtMost(LONGEST_RUN); run = run.plus(step)) {
            runs.add(run);
        }
        Stream.of(brief.wishes().run(), brief.wishes().targetRun())
                .flatMap(Optional::stream)
                .filter(Length::isPositive)
                .forEach(runs::add);
        return runs;
    }

    /** The run that just fills the space, down to the tape's line. */
    private Optional<Length> fillingRun(int risers) {
        int stepsBehindFirstTread = treads(risers) - 1;
        if (stepsBehindFirstTread == 0) {
            return Optional.empty();
        }
        Length firstTread = brief.treads().width().plus(brief.risers().inFront());
        return site.runAvailable()
                .map(available -> available
                        .value()
                        .minus(firstTread)
                        .dividedBy(stepsBehindFirstTread)
                        .roundedDown(brief.tape().graduation()))
                .filter(run -> run.isAtLeast(SHORTEST_RUN) && run.isAtMost(LONGEST_RUN));
    }
}
