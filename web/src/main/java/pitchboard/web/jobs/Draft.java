package pitchboard.web.jobs;

import java.util.Optional;
import pitchboard.intake.written.Written;

/**
 * A job as somebody wrote it; it may be unfinished or make no sense yet.
 *
 * @param changes what would stand in the file of local changes that the job names
 */
public record Draft(Written.Group job, Optional<Written.Group> changes) {
    /** The words of one of its lines; empty when there is no such line, or more than words in it. */
    public String line(String name) {
        return job.findEntry(name)
                .map(Written.Entry::value)
                .map(value -> value.match(Written.Text::value, group -> "", sequence -> ""))
                .orElse("");
    }
}
