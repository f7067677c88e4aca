package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import pitchboard.job.Job;

/** What came of opening a job file: the job, or everything that is wrong with it. */
public sealed interface OpenedJob {
    record Understood(Path file, Job job) implements OpenedJob {}

    /**
     * Nothing of it can be used.
     *
     * @param troubles at least one
     */
    record NotUnderstood(List<Trouble> troubles) implements OpenedJob {
        public NotUnderstood {
            troubles = List.copyOf(troubles);
        }
    }

    default <T> T match(Function<Understood, T> understood, Function<NotUnderstood, T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
