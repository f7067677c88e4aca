package pitchboard.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import pitchboard.intake.JobText;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.LocalChanges.Change;
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

    /** Where people wrote it. */
    enum Text {
        JOB,
        /** The file of local changes that the job names. */
        CHANGES
    }

    /**
     * One local change that makes no sense.
     *
     * @param at where it stands in that text
     * @param words what is wrong with it and what would be right
     */
    record Problem(Text in, Spot at, String words) {}

    /**
     * Works the local changes into the book: those of the file first, then those of the job.
     *
     * @param printed the book that the notes name, as printed
     * @param changes what the file of local changes says that the notes name
     */
    static Composed of(Notes notes, Rulebook printed, Optional<LocalChanges> changes) {
        List<Change> elsewhere = changes.map(LocalChanges::changes).orElse(List.of());
        Amended amended = printed.amended(Stream.concat(elsewhere.stream(), notes.localLimits().stream())
                .map(Change::amendment)
                .toList());
        if (!amended.problems().isEmpty()) {
            Tape tape = notes.brief().tape();
            return new Refused(amended.problems().stream()
                    .map(problem -> find(elsewhere, problem)
                            .map(change -> problem(Text.CHANGES, change, problem, tape))
                            .orElseGet(() -> problem(
                                    Text.JOB, find(notes.localLimits(), problem).orElseThrow(), problem, tape)))
                    .toList());
        }
        // Comments, order and spelling of a file must not change what is printed on the sheets.
        Fingerprint fingerprint = Fingerprint.of(JobText.canonical(notes, changes));
        return new Whole(new Job(notes.site(), notes.brief(), amended.book(), fingerprint));
    }

    private static Optional<Change> find(List<Change> changes, Amended.Problem problem) {
        return changes.stream()
                .filter(change -> change.amendment().equals(problem.amendment()))
                .findFirst();
    }

    private static Problem problem(Text in, Change change, Amended.Problem problem, Tape tape) {
        String wrong = problem.wrong().write(tape, Tape.Style.PLAIN);
        return new Problem(in, change.at(), wrong + "; " + problem.right().write(tape, Tape.Style.PLAIN));
    }

    default <T> T match(Function<Whole, T> whole, Function<Refused, T> refused) {
        return this instanceof Whole good ? whole.apply(good) : refused.apply((Refused) this);
    }
}
