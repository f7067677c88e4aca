package pitchboard.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.JobText;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Spot;
import pitchboard.measure.Tape;
import pitchboard.rules.Amended;
import pitchboard.rules.Rulebook;

/** What came of putting what people said and the rulebook they chose together: a job, or all that stands against it. */
public sealed interface Composed {
    record Whole(Job job) implements Composed {}

    /**
     * The local changes make no sense for this book.
     *
     * @param problems at least one
     */
    record Refused(List<Problem> problems) implements Composed {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * One local change that makes no sense.
     *
     * @param at where it stands among the local changes
     * @param words what is wrong with it and what would be right
     */
    record Problem(Spot at, String words) {}

    /**
     * Works the local changes into the book.
     *
     * @param printed the book that the notes name, as printed
     */
    static Composed of(Notes notes, Rulebook printed, Optional<LocalChanges> changes) {
        Amended amended = printed.amended(changes.map(LocalChanges::amendments).orElse(List.of()));
        if (!amended.problems().isEmpty()) {
            return new Refused(amended.problems().stream()
                    .map(problem -> problem(
                            changes.orElseThrow(), problem, notes.brief().tape()))
                    .toList());
        }
        // Comments, order and spelling of a file must not change what is printed on the sheets.
        Fingerprint fingerprint = Fingerprint.of(JobText.canonical(notes, changes));
        return new Whole(new Job(notes.site(), notes.brief(), amended.book(), fingerprint));
    }

    private static Problem problem(LocalChanges changes, Amended.Problem problem, Tape tape) {
        Spot at = changes.changes().stream()
                .filter(change -> change.amendment().equals(problem.amendment()))
                .map(LocalChanges.Change::at)
                .findFirst()
                .orElse(Spot.NOWHERE);
        String wrong = problem.wrong().write(tape, Tape.Style.PLAIN);
        return new Problem(at, wrong + "; " + problem.right().write(tape, Tape.Style.PLAIN));
    }

    default <T> T match(Function<Whole, T> whole, Function<Refused, T> refused) {
        return this instanceof Whole good ? whole.apply(good) : refused.apply((Refused) this);
    }
}
