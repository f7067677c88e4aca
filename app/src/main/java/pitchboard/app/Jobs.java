package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Written;
import pitchboard.job.Composed;
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
        return opened(JobFiles.open(file, names));
    }

    /**
     * Opens one job file with other lines before its own.
     *
     * @return troubles at line 0 lie in the file itself or between the two; the others in the changes
     * @throws FileTrouble when it, or the file of local changes it names, cannot be read
     */
    static OpenedJob openChanged(Path file, Written.Group changes) throws FileTrouble {
        List<String> names = Books.all().stream().map(Rulebook::name).toList();
        return opened(JobFiles.openChanged(file, changes, names));
    }

    private static OpenedJob opened(JobFile opened) {
        return opened.match(
                Jobs::resolved,
                unread -> new OpenedJob.NotUnderstood(unread.problems().stream()
                        .map(problem -> Trouble.of(unread.file(), problem))
                        .toList()));
    }

    private static OpenedJob resolved(JobFile.Understood file) {
        Notes notes = file.notes();
        Rulebook printed = Books.findByName(notes.rulebook()).orElseThrow();
        List<Trouble> troubles = file.changes().map(JobFile.Changes::fromTheBookUp).orElse(List.of()).stream()
                .flatMap(changes -> troubles(notes, printed, changes).stream())
                .toList();
        if (!troubles.isEmpty()) {
            return new OpenedJob.NotUnderstood(troubles);
        }
        return Composed.of(notes, printed, file.changes().map(JobFile.Changes::together))
                .match(
                        whole -> new OpenedJob.Understood(file.file(), whole.job()),
                        refused -> new OpenedJob.NotUnderstood(refused.problems().stream()
                                .map(problem -> trouble(written(file, problem), problem))
                                .toList()));
    }

    /** What one file has wrong by itself, so that it is told beside the name of that file. */
    private static List<Trouble> troubles(Notes notes, Rulebook printed, JobFile.Changes changes) {
        return Composed.of(notes, printed, Optional.of(changes.local()))
                .match(
                        whole -> List.of(),
                        refused -> refused.problems().stream()
                                .filter(problem -> problem.in() == Composed.Text.CHANGES)
                                .map(problem -> trouble(changes.file(), problem))
                                .toList());
    }

    private static Path written(JobFile.Understood file, Composed.Problem problem) {
        return problem.in() == Composed.Text.JOB
                ? file.file()
                : file.changes().orElseThrow().file();
    }

    private static Trouble trouble(Path written, Composed.Problem problem) {
        return new Trouble(written, problem.at().line(), problem.at().column(), problem.words());
    }
}
