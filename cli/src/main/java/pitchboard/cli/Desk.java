package pitchboard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import pitchboard.app.Jobs;
import pitchboard.app.OpenedJob;
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
    /** Opens a job; when it cannot be understood, every problem is told and nothing comes back. */
    Optional<Job> open(Path file) throws FileTrouble {
        return Jobs.open(file).match(understood -> Optional.of(understood.job()), this::tell);
    }

    private Optional<Job> tell(OpenedJob.NotUnderstood unread) {
        unread.troubles().stream().map(Trouble::sentence).forEach(this::say);
        return Optional.empty();
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
