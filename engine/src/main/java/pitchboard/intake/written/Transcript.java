package pitchboard.intake.written;

import java.util.List;
import java.util.function.Function;

/** What came of reading a text for its shape. */
public sealed interface Transcript {
    /** It has one. */
    record Legible(Written written) implements Transcript {}

    /**
     * It has none.
     *
     * @param problems at least one, in the order of the text
     */
    record Illegible(List<Problem> problems) implements Transcript {
        public Illegible {
            problems = List.copyOf(problems);
        }

        public Illegible(Problem problem) {
            this(List.of(problem));
        }
    }

    default <T> T match(
            Function<? super Legible, ? extends T> legible, Function<? super Illegible, ? extends T> illegible) {
        return this instanceof Legible good ? legible.apply(good) : illegible.apply((Illegible) this);
    }
}
