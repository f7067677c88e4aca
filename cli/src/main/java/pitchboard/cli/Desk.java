package pitchboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import pitchboard.afterwards.Took;
import pitchboard.app.Jobs;
import pitchboard.app.OpenedJob;
import pitchboard.app.OpenedOptions;
import pitchboard.app.OpenedRates;
import pitchboard.app.OpenedTook;
import pitchboard.app.OpenedYard;
import pitchboard.app.Trouble;
import pitchboard.job.Job;
import pitchboard.store.FileTrouble;

/**
 * Where a command puts its results and its troubles.
 *
 * @param results what was asked for, and nothing else
 * @param messages progress and problems
 */
record Desk(PrintWriter results, PrintWriter messages) {
    /** A file with more problems than this is no job file, and a screen full of them tells nobody more. */
    static final int MOST_TOLD = 60;

    /** Opens a job; when it cannot be understood, its problems are told and nothing comes back. */
    Optional<Job> open(Path file) throws FileTrouble {
        return Jobs.open(file).match(understood -> Optional.of(understood.job()), this::tell);
    }

    /** Opens a price list; when it cannot be understood, its problems are told and nothing comes back. */
    Optional<OpenedYard.Understood> openYard(Path file) throws FileTrouble {
        OpenedYard opened = OpenedYard.open(file);
        if (opened instanceof OpenedYard.Understood understood) {
            return Optional.of(understood);
        }
        tell(((OpenedYard.NotUnderstood) opened).troubles());
        return Optional.empty();
    }

    /** Opens a file of rates; when it cannot be understood, its problems are told and nothing comes back. */
    Optional<OpenedRates.Understood> openRates(Path file) throws FileTrouble {
        OpenedRates opened = OpenedRates.open(file);
        if (opened instanceof OpenedRates.Understood understood) {
            return Optional.of(understood);
        }
        tell(((OpenedRates.NotUnderstood) opened).troubles());
        return Optional.empty();
    }

    /** Opens a file of what a job took; when it cannot be understood, its problems are told. */
    Optional<Took> openTook(Path file) throws FileTrouble {
        OpenedTook opened = OpenedTook.open(file);
        if (opened instanceof OpenedTook.Understood understood) {
            return Optional.of(understood.took());
        }
        tell(((OpenedTook.NotUnderstood) opened).troubles());
        return Optional.empty();
    }

    /** Opens a file of options with its jobs; when it cannot be understood, its problems are told. */
    Optional<OpenedOptions.Understood> openOptions(Path file) throws FileTrouble {
        OpenedOptions opened = OpenedOptions.open(file);
        if (opened instanceof OpenedOptions.Understood understood) {
            return Optional.of(understood);
        }
        tell(((OpenedOptions.NotUnderstood) opened).troubles());
        return Optional.empty();
    }

    private Optional<Job> tell(OpenedJob.NotUnderstood unread) {
        tell(unread.troubles());
        return Optional.empty();
    }

    private void tell(List<Trouble> troubles) {
        troubles.stream().limit(MOST_TOLD).map(Trouble::sentence).forEach(this::say);
        int more = troubles.size() - MOST_TOLD;
        if (more > 0) {
            say(troubles.get(0).file() + ": and " + more + " more, not shown");
        }
    }

    void say(String message) {
        messages.println(message);
        messages.flush();
    }

    void print(String text) {
        results.print(text);
        results.flush();
    }
}
