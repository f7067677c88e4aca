package pitchboard.stair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchboard.brief.Brief;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.site.Site;

/**
 * The flights worth trying: rises a leg can climb, runs a foot can stand on. Wider than any code, so that near misses
 * show up too.
 */
final class Candidates {
    private static final Length LOWEST_RISE = Length.inches(3);
    private static final Length HIGHEST_RISE = Length.inches(14);
    private static final Length SHORTEST_RUN = Length.inches(7);
    private static final Length LONGEST_RUN = Length.inches(16);
    private static final int MOST_RISERS = 60;

    private final Site site;
    private final Brief brief;

    private Candidates(Site site, Brief brief) {
        this.site = site;
        this.brief = brief;
    }

    static Stream<Stair> of(Site site, Brief brief) {
        Candidates candidates = new Candidates(site, brief);
        return IntStream.rangeClosed(1, MOST_RISERS).boxed().flatMap(candidates::withRisers);
    }

    private Stream<Stair> withRisers(int risers) {
        if (treads(risers) < 1 || !couldClimb(risers)) {
            return Stream.empty();
        }
        return runs(risers).flatMap(run -> stair(risers, run).stream());
    }

    private int treads(int risers) {
        return brief.headJoin() == HeadJoin.FLUSH ? risers : risers - 1;
    }

    /** A quick look at both ends of the range of runs, so that hopeless counts cost nothing. */
    private boolean couldClimb(int risers) {
        Length a = landedRise(risers, SHORTEST_RUN);
        Length b = landedRise(risers, LONGEST_RUN);
        return Length.max(a, b).dividedBy(risers).isAtLeast(LOWEST_RISE)
                && Length.min(a, b).dividedBy(risers).isAtMost(HIGHEST_RISE);
    }

    /** The landing point moves with the run, and on a slope the rise moves with it. */
    private Length landedRise(int risers, Length run) {
        return site.totalRise(run.times(treads(risers)).plus(brief.risers().inFront()));
    }

    private Optional<Stair> stair(int risers, Length run) {
        Length totalRise = landedRise(risers, run);
        Length rise = totalRise.dividedBy(risers);
        if (rise.isLessThan(LOWEST_RISE) || rise.isMoreThan(HIGHEST_RISE)) {
            return Optional.empty();
        }
        return Optional.of(new Stair(site, brief, new Flight(brief.headJoin(), risers, totalRise, run)));
    }

    /** Round runs of the tape, what was wished for, and the run that just fills the space. */
    private Stream<Length> runs(int risers) {
        TreeSet<Length> runs = new TreeSet<>(roundRuns(brief.tape()));
        brief.wishes().run().ifPresent(runs::add);
        brief.wishes().targetRun().ifPresent(runs::add);
        fillingRun(risers).ifPresent(runs::add);
        return runs.stream();
    }

    private static List<Length> roundRuns(Tape tape) {
        Length step = tape.isInches() ? Length.inches(0, 1, 4) : Length.mm(5);
        List<Length> runs = new ArrayList<>();
        long first = SHORTEST_RUN.wholeTimes(step);
        for (long i = first; step.times(i).isAtMost(LONGEST_RUN); i++) {
            runs.add(step.times(i));
        }
        return runs;
    }

    private Optional<Length> fillingRun(int risers) {
        int stepsBehindFirstTread = treads(risers) - 1;
        if (stepsBehindFirstTread == 0) {
            return Optional.empty();
        }
        return site.runAvailable()
                .map(available -> available
                        .value()
                        .minus(brief.treads().width())
                        .minus(brief.risers().inFront())
                        .dividedBy(stepsBehindFirstTread)
                        .roundedDown(brief.tape().graduation()))
                .filter(run -> run.isAtLeast(SHORTEST_RUN) && run.isAtMost(LONGEST_RUN));
    }
}
