package pitchboard.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchboard.intake.ChangesText;
import pitchboard.intake.LocalChanges;
import pitchboard.intake.Notes;
import pitchboard.intake.written.Problem;

/** Follows local changes from the file that a job names, over the files that each is based on, down to the rulebook. */
final class ChangesChain {
    private static final String BASED_ON = "based on";

    private final Path job;
    private final Notes notes;
    private final List<Path> opened = new ArrayList<>();

    ChangesChain(Path job, Notes notes) {
        this.job = job;
        this.notes = notes;
    }

    /**
     * Opens the file that the job names, and all below it.
     *
     * @throws FileTrouble when one of them is missing or cannot be read
     */
    JobFile open(Path first) throws FileTrouble {
        List<JobFile.Changes> fromTheJob = new ArrayList<>();
        Optional<Path> next = Optional.of(first);
        while (next.isPresent()) {
            Path file = next.get();
            opened.add(file);
            ChangesText text = read(file);
            if (text instanceof ChangesText.NotUnderstood bad) {
                return new JobFile.NotUnderstood(file, bad.problems());
            }
            LocalChanges local = ((ChangesText.Understood) text).changes();
            fromTheJob.add(new JobFile.Changes(file, local, Optional.empty()));
            next = findBase(file, local);
        }
        return new JobFile.Understood(job, notes, stacked(fromTheJob));
    }

    /** Changes to another book than the job's are a mistake, so beside files the job's is the only name that will do. */
    private ChangesText read(Path file) throws FileTrouble {
        ChangesText text = JobFiles.openChanges(file, List.of());
        Optional<Path> base = text.match(good -> findBase(file, good.changes()), bad -> Optional.empty());
        if (base.isEmpty()) {
            return JobFiles.openChanges(file, List.of(notes.rulebook()));
        }
        return opened.contains(base.get()) ? inACircle(file) : text;
    }

    private ChangesText inACircle(Path file) throws FileTrouble {
        String expected = Problem.quoted(notes.rulebook()) + ", or a file that is not based on this one in turn";
        return JobFiles.openChanges(file, List.of(notes.rulebook()))
                .match(
                        good -> good,
                        bad -> new ChangesText.NotUnderstood(bad.problems().stream()
                                .map(problem -> problem.field().equals(BASED_ON)
                                        ? new Problem(problem.at(), BASED_ON, problem.read(), expected)
                                        : problem)
                                .toList()));
    }

    /** The file that these are based on; empty when it is named like no file, and so must be the rulebook. */
    private static Optional<Path> findBase(Path file, LocalChanges local) {
        String name = local.basedOn().toLowerCase(Locale.ROOT);
        boolean isFile = name.endsWith(".yaml") || name.endsWith(".yml") || name.endsWith(".json");
        return isFile ? Optional.of(file.resolveSibling(local.basedOn()).normalize()) : Optional.empty();
    }

    private static Optional<JobFile.Changes> stacked(List<JobFile.Changes> fromTheJob) {
        Optional<JobFile.Changes> top = Optional.empty();
        for (int i = fromTheJob.size() - 1; i >= 0; i--) {
            JobFile.Changes each = fromTheJob.get(i);
            top = Optional.of(new JobFile.Changes(each.file(), each.local(), top));
        }
        return top;
    }
}
