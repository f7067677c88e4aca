package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import pitchboard.afterwards.Took;
import pitchboard.store.FileTrouble;
import pitchboard.store.TookFiles;

/** What came of opening a file of what a job took: all of it, or everything that is wrong with it. */
public sealed interface OpenedTook {
    record Understood(Took took) implements OpenedTook {}

    /**
     * Nothing of it can be used.
     *
     * @param troubles at least one
     */
    record NotUnderstood(List<Trouble> troubles) implements OpenedTook {
        public NotUnderstood {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Opens a file of what a job took.
     *
     * @throws FileTrouble when it cannot be read
     */
    static OpenedTook open(Path file) throws FileTrouble {
        return TookFiles.open(file)
                .match(
                        read -> new Understood(read.took()),
                        unread -> new NotUnderstood(unread.problems().stream()
                                .map(problem -> Trouble.of(file, problem))
                                .toList()));
    }
}
