package pitchboard.store;

import java.nio.file.Path;
import pitchboard.intake.offers.OfferedText;

/** Files of options on disk. */
public final class OfferFiles {
    private OfferFiles() {}

    /**
     * Opens a file of options.
     *
     * @throws FileTrouble when the file is missing or cannot be read
     */
    public static OfferedText open(Path file) throws FileTrouble {
        return OfferedText.of(WrittenFile.read(file));
    }
}
