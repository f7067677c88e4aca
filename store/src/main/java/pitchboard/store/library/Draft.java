package pitchboard.store.library;

import java.util.Optional;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;

/**
 * A job as it is to be kept. It need not be complete, nor even legible: what is half typed is kept as well.
 *
 * @param changes the local changes to its rulebook; empty when there are none
 * @param name what the list calls it; may be blank
 * @param place what the list shows beside the name; may be blank
 */
public record Draft(Wording job, Optional<Wording> changes, String name, String place) {
    /** More than the job file allows, so only a mistake is cut; the text itself is never cut. */
    private static final int LONGEST_IN_LIST = 200;

    public Draft {
        Wording.requireWhole(name);
        Wording.requireWhole(place);
    }

    /** With name and place as the text says them in its lines {@code job} and {@code place}; blank when it does not. */
    public static Draft of(Wording job, Optional<Wording> changes) {
        Optional<Written.Group> lines = lines(job.read());
        return new Draft(job, changes, line(lines, "job"), line(lines, "place"));
    }

    private static Optional<Written.Group> lines(Transcript transcript) {
        boolean grouped =
                transcript instanceof Transcript.Legible legible && legible.written() instanceof Written.Group;
        return grouped ? Optional.of((Written.Group) ((Transcript.Legible) transcript).written()) : Optional.empty();
    }

    private static String line(Optional<Written.Group> lines, String name) {
        return lines.flatMap(group -> group.findEntry(name))
                .map(Written.Entry::value)
                .map(value -> value.match(Written.Text::value, group -> "", sequence -> ""))
                .map(Draft::shortened)
                .orElse("");
    }

    private static String shortened(String text) {
        String words = text.strip();
        if (words.codePointCount(0, words.length()) <= LONGEST_IN_LIST) {
            return words;
        }
        return words.substring(0, words.offsetByCodePoints(0, LONGEST_IN_LIST));
    }

    /** Whether saving it after the other would change nothing. */
    boolean addsNothingTo(Draft other) {
        if (changes.isPresent() != other.changes.isPresent()) {
            return false;
        }
        boolean sameChanges = changes.isEmpty() || changes.get().addsNothingTo(other.changes.get());
        return sameChanges && job.addsNothingTo(other.job);
    }
}
