package pitchboard;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** What a random job is drawn from: one seed, one tape. The same seed draws the same on every machine. */
final class Draws {
    private final SplittableRandom random;

    Draws(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** From {@code low} up to and with {@code high}. */
    int between(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    boolean percent(int chance) {
        return random.nextInt(100) < chance;
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    <T> Optional<T> maybe(int percent, Supplier<T> value) {
        return percent(percent) ? Optional.of(value.get()) : Optional.empty();
    }

    /** Some line of the tape from {@code lowMm} to {@code highMm}. */
    Length onTape(Tape tape, int lowMm, int highMm) {
        Length step = tape.graduation().step();
        long first = Length.mm(lowMm).wholeTimes(step);
        long last = Length.mm(highMm).wholeTimes(step);
        return step.times(random.nextLong(first, last + 1));
    }
}
