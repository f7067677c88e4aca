package pitchboard.measure;

import java.math.BigInteger;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/** Random quantities from a fixed seed, so that a law that fails once fails every time. */
final class Draws {
    private final SplittableRandom random;

    private Draws(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** Holds a law up to so many draws. */
    static void times(int count, long seed, Consumer<Draws> law) {
        Draws draws = new Draws(seed);
        for (int i = 0; i < count; i++) {
            law.accept(draws);
        }
    }

    /** From {@code low} up to and with {@code high}. */
    long between(long low, long high) {
        return random.nextLong(low, high + 1);
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** Sizes from one bit to 90, so that small and wide numbers meet each other. */
    BigInteger whole() {
        int bits = random.nextInt(1, 91);
        BigInteger value = BigInteger.ZERO;
        for (int i = 0; i < bits; i++) {
            value = value.shiftLeft(1).add(BigInteger.valueOf(random.nextInt(2)));
        }
        return random.nextBoolean() ? value : value.negate();
    }

    BigInteger wholeButZero() {
        BigInteger value = whole();
        return value.signum() == 0 ? BigInteger.ONE : value;
    }

    Ratio ratio() {
        return Ratio.of(whole(), wholeButZero());
    }

    /** With numerators and denominators that a job has: a few digits. */
    Ratio jobRatio() {
        return Ratio.of(between(-100_000, 100_000), between(1, 500));
    }

    /** A length a job has, exact on neither tape. */
    Length jobLength() {
        return random.nextBoolean()
                ? Length.inches(jobRatio())
                : Length.mm(jobRatio().times(25));
    }

    /** On a line of the tape, up to some forty feet. */
    Length onTape(Graduation graduation) {
        return graduation.step().times(between(0, 32_000));
    }

    /** From steeper than a ladder to flatter than a ramp. */
    Pitch pitch() {
        return Pitch.of(Length.inches(0, between(1, 320), 16), Length.inches(0, between(1, 640), 32));
    }

    String text(List<String> pieces, int mostPieces) {
        StringBuilder text = new StringBuilder();
        int count = random.nextInt(mostPieces + 1);
        for (int i = 0; i < count; i++) {
            text.append(oneOf(pieces));
        }
        return text.toString();
    }
}
