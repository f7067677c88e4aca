package pitchboard.stair;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pitchboard.RandomJobs.Asked;
import pitchboard.Samples;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;

/** The solver against trying everything in the plainest way, on random jobs. */
final class SolverLawsTest {
    private static final Samples<Asked> JOBS = Samples.jobs(300);

    /** Stands for a code: rise at most 7 3/4 in, run at least 10 in. */
    private static final Gate CODE = stair -> {
        List<Objection> against = new ArrayList<>();
        if (stair.rise().isMoreThan(Length.inches(7, 3, 4))) {
            against.add(new Objection(
                    "rise", "rise", stair.rise(), Length.inches(7, 3, 4), "a code", Phrase.of("add a riser")));
        }
        if (stair.run().isLessThan(Length.inches(10))) {
            against.add(new Objection(
                    "run", "run", stair.run(), Length.inches(10), "a code", Phrase.of("lengthen the run")));
        }
        return against;
    };

    private static Choices choices(Asked job) {
        return Solver.choices(job.site(), job.brief(), CODE);
    }

    /** Number of risers and run. */
    private record Step(int risers, Length run) {
        static Step of(Option option) {
            return new Step(option.stair().flight().risers(), option.stair().run());
        }
    }

    /** Every number of risers with every run, and what is against it. */
    private static List<Option> everything(Asked job) {
        List<Option> all = new ArrayList<>();
        int wished = job.brief().wishes().risers().orElse(0);
        for (int risers = 1; risers <= 60; risers++) {
            int treads = job.brief().headJoin() == HeadJoin.FLUSH ? risers : risers - 1;
            for (Length run : treads == 0 ? new TreeSet<Length>() : runs(job, treads)) {
                Length rise = job.site()
                        .totalRise(run.times(treads).plus(job.brief().risers().inFront()));
                boolean climbable =
                        rise.isAtLeast(Length.inches(3L * risers)) && rise.isAtMost(Length.inches(14L * risers));
                if (climbable || (risers == wished && rise.isPositive())) {
                    all.add(judged(job, new Flight(job.brief().headJoin(), risers, rise, run)));
                }
            }
        }
        return all;
    }

    private static Option judged(Asked job, Flight flight) {
        Stair stair = new Stair(job.site(), job.brief(), flight);
        List<Objection> against = new ArrayList<>(new Buildable().objections(stair));
        assertThat(against.isEmpty()).isEqualTo(HandCheck.against(stair).isEmpty());
        against.addAll(CODE.objections(stair));
        return new Option(stair, against);
    }

    private static NavigableSet<Length> runs(Asked job, int treads) {
        NavigableSet<Length> runs = new TreeSet<>();
        for (int i = 28; i <= 64; i++) {
            runs.add(Length.inches(0, i, 4));
        }
        if (!job.brief().tape().isInches()) {
            runs.clear();
            for (int mm = 175; mm <= 405; mm += 5) {
                runs.add(Length.mm(mm));
            }
        }
        job.brief().wishes().run().ifPresent(runs::add);
        job.brief().wishes().targetRun().ifPresent(runs::add);
        filling(job, treads).ifPresent(runs::add);
        return runs;
    }

    private static Optional<Length> filling(Asked job, int treads) {
        if (treads == 1 || job.site().runAvailable().isEmpty()) {
            return Optional.empty();
        }
        Length behind = job.site()
                .runAvailable()
                .orElseThrow()
                .value()
                .minus(job.brief().treads().width())
                .minus(job.brief().risers().inFront());
        Length run =
                behind.dividedBy(treads - 1L).roundedDown(job.brief().tape().graduation());
        return Optional.of(run).filter(each -> each.isAtLeast(Length.inches(7)) && each.isAtMost(Length.inches(16)));
    }

    @Test
    void it_finds_every_stair_that_is_allowed_and_no_other() {
        JOBS.hold(job -> {
            Choices choices = choices(job);
            List<Step> found = Stream.concat(choices.allowed().stream(), choices.otherwiseAllowed().stream())
                    .map(Step::of)
                    .toList();
            List<Step> expected = everything(job).stream()
                    .filter(Option::isAllowed)
                    .map(Step::of)
                    .toList();
            assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
        });
    }

    @Test
    void what_was_fixed_is_kept() {
        JOBS.hold(job -> {
            Choices choices = choices(job);
            assertThat(choices.allowed()).allMatch(option -> isAsFixed(job, option));
            assertThat(choices.otherwiseAllowed()).noneMatch(option -> isAsFixed(job, option));
            choices.chosen()
                    .ifPresent(chosen -> assertThat(isAsFixed(job, chosen)).isTrue());
        });
    }

    private static boolean isAsFixed(Asked job, Option option) {
        Flight flight = option.stair().flight();
        return job.brief()
                        .wishes()
                        .risers()
                        .map(fixed -> fixed == flight.risers())
                        .orElse(true)
                && job.brief()
                        .wishes()
                        .run()
                        .map(fixed -> fixed.equals(flight.run()))
                        .orElse(true);
    }

    @Test
    void better_choices_come_first() {
        JOBS.hold(job -> {
            List<Option> allowed = choices(job).allowed();
            assertThat(allowed).isSortedAccordingTo(Comparator.comparing(option -> fromTargets(job, option)));
            for (int i = 1; i < allowed.size(); i++) {
                Option better = allowed.get(i - 1);
                Option worse = allowed.get(i);
                if (fromTargets(job, better).equals(fromTargets(job, worse))) {
                    assertThat(better.comforts())
                            .hasSizeGreaterThanOrEqualTo(worse.comforts().size());
                }
            }
        });
    }

    private static Length fromTargets(Asked job, Option option) {
        Length sum = Length.ZERO;
        for (Length target : job.brief().wishes().targetRise().stream().toList()) {
            sum = sum.plus(option.stair().rise().minus(target).abs());
        }
        for (Length target : job.brief().wishes().targetRun().stream().toList()) {
            sum = sum.plus(option.stair().run().minus(target).abs());
        }
        return sum;
    }

    @Test
    void near_misses_have_the_least_against_them_and_are_the_nearest_of_their_kind() {
        JOBS.hold(job -> {
            List<Option> misses = choices(job).nearMisses();
            List<Option> against = everything(job).stream()
                    .filter(option -> !option.isAllowed())
                    .toList();
            int fewest = against.stream()
                    .mapToInt(option -> option.objections().size())
                    .min()
                    .orElse(0);
            Map<List<String>, List<Option>> kinds = against.stream()
                    .filter(option -> option.objections().size() == fewest)
                    .collect(groupingBy(SolverLawsTest::kind));
            assertThat(misses).extracting(SolverLawsTest::kind).containsExactlyInAnyOrderElementsOf(kinds.keySet());
            assertThat(misses).isSortedAccordingTo(Comparator.comparingDouble(Option::worstMiss));
            assertThat(misses)
                    .allSatisfy(miss ->
                            assertThat(kinds.get(kind(miss))).allMatch(other -> other.worstMiss() >= miss.worstMiss()));
        });
    }

    private static List<String> kind(Option option) {
        return option.objections().stream().map(Objection::id).sorted().toList();
    }

    @Test
    void a_stair_is_chosen_when_one_is_allowed_and_when_none_is_only_what_was_fixed_is_forced() {
        JOBS.hold(job -> {
            Choices choices = choices(job);
            if (!choices.allowed().isEmpty()) {
                assertThat(choices.chosen()).contains(choices.allowed().get(0));
            } else if (!job.brief().wishes().fixesSomething()) {
                assertThat(choices.chosen()).isEmpty();
            } else {
                choices.chosen().ifPresent(forced -> {
                    assertThat(forced.isAllowed()).isFalse();
                    assertThat(new Buildable().objections(forced.stair())).isEmpty();
                });
            }
        });
    }
}
