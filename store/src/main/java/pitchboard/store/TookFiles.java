package pitchboard.store;

import java.nio.file.Path;
import pitchboard.intake.rates.TookText;

/** Files of what a job took on disk. */
public final class TookFiles {
    private TookFiles() {}

    /**
     * Opens a file of what a job took.
     *
     * @throws FileTrouble when the file is missing or cannot be read
     */
    public static TookText open(Path file) throws FileTrouble {
        return TookText.of(WrittenFile.read(file));
    }
}
