package pitchboard.app;

import java.nio.file.Path;
import java.util.List;
import pitchboard.buying.yard.Yard;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.yard.YardText;
import pitchboard.store.FileTrouble;
import pitchboard.store.YardFiles;

/** What came of opening a price list: the list, or everything that is wrong with it. */
public sealed interface OpenedYard {
    /** @param text the list as it would be written, for the fingerprint */
    record Understood(Yard yard, String text) implements OpenedYard {}

    /**
     * Nothing of it can be used.
     *
     * @param troubles at least one
     */
    record NotUnderstood(List<Trouble> troubles) implements OpenedYard {
        public NotUnderstood {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * Opens a price list.
     *
     * @throws FileTrouble when it cannot be read
     */
    static OpenedYard open(Path file) throws FileTrouble {
        return YardFiles.open(file)
                .match(
                        read -> new Understood(read.yard(), JsonWriter.write(YardText.write(read.yard()))),
                        unread -> new NotUnderstood(unread.problems().stream()
                                .map(problem -> Trouble.of(file, problem))
                                .toList()));
    }
}
