package pitchboard.store;

import java.nio.file.Path;
import pitchboard.intake.rates.RatesText;

/** Files of rates on disk. */
public final class RatesFiles {
    private RatesFiles() {}

    /**
     * Opens a file of rates.
     *
     * @throws FileTrouble when the file is missing or cannot be read
     */
    public static RatesText open(Path file) throws FileTrouble {
        return RatesText.of(WrittenFile.read(file));
    }
}
