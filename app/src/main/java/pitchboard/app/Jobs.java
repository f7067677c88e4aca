package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import pitchboard.intake.JobText;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Spot;
import pitchboard.job.Fingerprint;
import pitchboard.job.Job;
import pitchboard.measure.Tape;
import pitchboard.rules.Amended;
import pitchboard.rules.Rulebook;
import pitchboard.rules.books.Books;
import pitchboard.store.FileTrouble;
import pitchboard.store.JobFile;
import pitchboard.store.JobFiles;

/** Opens job files: reads them, finds the rulebook they name and works the local changes into it. */
public final class Jobs {
    private Jobs() {}

    /**
     * Opens one job file.
     *
     * @throws FileTrouble when it, or the file of local changes it names, cannot be read
     */
    public static OpenedJob open(Path file) throws FileTrouble {
        List<String> names = Books.all().stream().map(Rulebook::name).toList();
        return JobFiles.open(file, names)
                .match(
                        Jobs::resolved,
                        unread -> new OpenedJob.NotUnderstood(unread.problems().stream()
                                .map(problem -> Trouble.of(unread.file(), problem))
                                .toList()));
    }

    private static OpenedJob resolved(JobFile.Understood file) {
        Notes notes = file.notes();
        Rulebook printed = Books.findByName(notes.rulebook()).orElseThrow();
        Amended amended = printed.amended(file.amendments());
        if (!amended.problems().isEmpty()) {
            JobFile.Changes changes = file.changes().orElseThrow();
            return new OpenedJob.NotUnderstood(amended.problems().stream()
                    .map(problem -> trouble(changes, problem, notes.brief().tape()))
                    .toList());
        }
        // Comments, order and spelling of a file must not change what is printed on the sheets.
        String canonical = JobText.canonical(notes, file.changes().map(JobFile.Changes::local));
        return new OpenedJob.Understood(
                file.file(), new Job(notes.site(), notes.brief(), amended.book(), Fingerprint.of(canonical)));
    }

    private static Trouble trouble(JobFile.Changes changes, Amended.Problem problem, Tape tape) {
        Spot at = changes.local().changes().stream()
                .filter(change -> change.amendment().equals(problem.amendment()))
                .map(LocalChanges.Change::at)
                .findFirst()
                .orElse(Spot.NOWHERE);
        return new Trouble(
                changes.file(),
                at.line(),
                at.column(),
                problem.wrong().write(tape, Tape.Style.PLAIN) + "; "
                        + problem.right().write(tape, Tape.Style.PLAIN));
    }
}
