package pitchboard.job;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.ChangesText;
import pitchboard.intake.JobText;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.rules.Rulebook;

/** What came of reading a job that lies in no file: the job, or everything that is wrong with it. */
public sealed interface ReadJob {
    record Understood(Job job) implements ReadJob {}

    /**
     * Nothing of it can be used.
     *
     * @param troubles at least one
     */
    record NotUnderstood(List<Trouble> troubles) implements ReadJob {
        public NotUnderstood {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * One thing that is wrong.
     *
     * @param in which of the two texts it lies in
     * @param at where in that text
     * @param field the keys that lead there; empty when it is about no single line
     * @param words what is wrong and what would be right, without the place
     * @param missing whether a line is not there rather than wrong
     */
    record Trouble(Composed.Text in, Spot at, String field, String words, boolean missing) {
        private static Trouble of(Composed.Text in, Problem problem) {
            String words = new Problem(Spot.NOWHERE, "", problem.read(), problem.expected()).sentence();
            return new Trouble(
                    in, problem.at(), problem.field(), words, problem.read().isEmpty());
        }

        private static Trouble of(Composed.Problem problem) {
            return new Trouble(problem.in(), problem.at(), "", problem.words(), false);
        }
    }

    /**
     * Reads a job.
     *
     * @param changes what would stand in the file of local changes that the job names
     * @param books every rulebook a job may name
     */
    static ReadJob of(Written job, Optional<? extends Written> changes, List<Rulebook> books) {
        List<String> names = books.stream().map(Rulebook::name).toList();
        return JobText.of(new Transcript.Legible(job), names)
                .match(
                        read -> withChanges(job, read.notes(), changes, books),
                        unread -> refused(Composed.Text.JOB, unread.problems()));
    }

    private static ReadJob refused(Composed.Text in, List<Problem> problems) {
        return new NotUnderstood(
                problems.stream().map(problem -> Trouble.of(in, problem)).toList());
    }

    private static ReadJob withChanges(
            Written job, Notes notes, Optional<? extends Written> changes, List<Rulebook> books) {
        Rulebook printed = books.stream()
                .filter(book -> book.name().equals(notes.rulebook()))
                .findFirst()
                .orElseThrow();
        if (notes.localChanges().isPresent() != changes.isPresent()) {
            Written at = changes.isPresent() ? changes.get() : job;
            return refused(Composed.Text.CHANGES, List.of(mismatch(notes, at)));
        }
        if (changes.isEmpty()) {
            return composed(notes, printed, Optional.empty());
        }
        // Changes to another book than the job's are a mistake, so the job's is the only name that will do.
        return ChangesText.of(new Transcript.Legible(changes.get()), List.of(notes.rulebook()))
                .match(
                        read -> composed(notes, printed, Optional.of(read.changes())),
                        unread -> refused(Composed.Text.CHANGES, unread.problems()));
    }

    /** Judging by a book without the changes that the job asks for would show a fail as a pass, or a pass as a fail. */
    private static Problem mismatch(Notes notes, Written at) {
        String expected = notes.localChanges()
                .map(name -> "the local changes in \"" + name + "\", which the job names")
                .orElse("no local changes, because the job names none");
        return new Problem(at.at(), "", "", expected);
    }

    private static ReadJob composed(Notes notes, Rulebook printed, Optional<LocalChanges> changes) {
        return Composed.of(notes, printed, changes)
                .match(
                        whole -> new Understood(whole.job()),
                        refused -> new NotUnderstood(
                                refused.problems().stream().map(Trouble::of).toList()));
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
