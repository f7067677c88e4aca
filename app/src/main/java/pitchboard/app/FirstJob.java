package pitchboard.app;

import java.nio.file.Path;
import pitchboard.store.AtomicWrite;
import pitchboard.store.FileTrouble;
import pitchboard.store.Starter;

/** A first job file, to be filled in. */
public final class FirstJob {
    private FirstJob() {}

    /**
     * Makes the file.
     *
     * @throws FileTrouble when it cannot be written, or is there already: then it is left alone
     */
    public static void make(Path file) throws FileTrouble {
        AtomicWrite.newText(file, Starter.text());
    }
}
