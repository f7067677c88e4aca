package pitchboard.app;

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
import pitchboard.job.Composed;
import pitchboard.job.Job;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;

/** What came of reading a job that lies in no file: the job, or everything that is wrong with it. */
public sealed interface WrittenJob {
    record Understood(Job job) implements WrittenJob {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one
     */
    record NotUnderstood(List<Problem> problems) implements WrittenJob {
        public NotUnderstood {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a job.
     *
     * @param changes what would stand in the file of local changes that the job names
     */
    static WrittenJob read(Written job, Optional<? extends Written> changes) {
        List<String> names = Books.all().stream().map(Rulebook::name).toList();
        return JobText.of(new Transcript.Legible(job), names)
                .match(read -> withChanges(read.notes(), changes), unread -> new NotUnderstood(unread.problems()));
    }

    private static WrittenJob withChanges(Notes notes, Optional<? extends Written> changes) {
        if (notes.localChanges().isPresent() != changes.isPresent()) {
            return new NotUnderstood(List.of(mismatch(notes)));
        }
        if (changes.isEmpty()) {
            return composed(notes, Optional.empty());
        }
        // Changes to another book than the job's are a mistake, so the job's is the only name that will do.
        return ChangesText.of(new Transcript.Legible(changes.get()), List.of(notes.rulebook()))
                .match(
                        read -> composed(notes, Optional.of(read.changes())),
                        unread -> new NotUnderstood(unread.problems()));
    }

    /** Judging by a book without the changes that the job asks for would show a fail as a pass, or a pass as a fail. */
    private static Problem mismatch(Notes notes) {
        String expected = notes.localChanges()
                .map(name -> "the local changes in \"" + name + "\", which the job names")
                .orElse("no local changes, because the job names none");
        return new Problem(Spot.NOWHERE, "", "", expected);
    }

    private static WrittenJob composed(Notes notes, Optional<LocalChanges> changes) {
        Rulebook printed = Books.findByName(notes.rulebook()).orElseThrow();
        return Composed.of(notes, printed, changes)
                .match(whole -> new Understood(whole.job()), refused -> new NotUnderstood(refusals(refused)));
    }

    private static List<Problem> refusals(Composed.Refused refused) {
        return refused.problems().stream()
                .map(problem -> new Problem(problem.at(), "", "", problem.words()))
                .toList();
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
