package pitchboard.store;

import java.nio.file.Path;
import pitchboard.intake.yard.YardText;

/** Price lists on disk. */
public final class YardFiles {
    private YardFiles() {}

    /**
     * Opens a price list.
     *
     * @throws FileTrouble when the file is missing or cannot be read
     */
    public static YardText open(Path file) throws FileTrouble {
        return YardText.of(WrittenFile.read(file));
    }
}
