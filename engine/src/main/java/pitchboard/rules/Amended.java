package pitchboard.rules;

import java.util.List;
import pitchboard.measure.Phrase;

/**
 * A book after local changes.
 *
 * @param problems the changes that were not worked in, and why; empty when all were
 */
public record Amended(Rulebook book, List<Problem> problems) {
    public Amended {
        problems = List.copyOf(problems);
    }

    /**
     * A change that makes no sense for this book.
     *
     * @param wrong what is wrong with it, a whole sentence without its point
     * @param right what would be right, in the imperative
     */
    public record Problem(Amendment amendment, Phrase wrong, Phrase right) {}
}
