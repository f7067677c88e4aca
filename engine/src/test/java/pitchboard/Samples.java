package pitchboard;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import pitchboard.stair.Buildable;
import pitchboard.stair.Stair;

/** Random things to try a law on; a law that breaks names the seed it broke on. */
public record Samples<T>(List<Sample<T>> all) {
    private static final Buildable WOOD = new Buildable();

    /** One thing, and the seed of the job it was made from. */
    public record Sample<T>(long seed, T value) {}

    /** The jobs of the seeds 0, 1, 2 ... */
    public static Samples<RandomJobs.Asked> jobs(int count) {
        return new Samples<>(LongStream.range(0, count)
                .mapToObj(seed -> new Sample<>(seed, RandomJobs.of(seed)))
                .toList());
    }

    /** A stair for each of the first jobs that climbs at all: good, bad, or impossible to build. */
    public static Samples<Stair> anyStairs(int jobs) {
        return new Samples<>(stairs(jobs).toList());
    }

    /** Those of {@link #anyStairs} that wood and space allow. */
    public static Samples<Stair> buildableStairs(int jobs) {
        return new Samples<>(stairs(jobs)
                .filter(sample -> WOOD.objections(sample.value()).isEmpty())
                .toList());
    }

    private static Stream<Sample<Stair>> stairs(int jobs) {
        return jobs(jobs).all().stream()
                .flatMap(sample -> RandomJobs.findAnyStair(sample.value()).stream()
                        .map(stair -> new Sample<>(sample.seed(), stair)));
    }

    public Stream<T> stream() {
        return all.stream().map(Sample::value);
    }

    public void hold(Consumer<? super T> law) {
        for (Sample<T> sample : all) {
            try {
                law.accept(sample.value());
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError("seed " + sample.seed() + ": " + broken.getMessage(), broken);
            }
        }
    }
}
