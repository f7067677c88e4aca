package pitchboard.documents.fonts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import pitchboard.sheet.Face;

/** One face of the family as a TrueType file. */
public enum FontFile {
    REGULAR("/fonts/ArchivoNarrow-Regular.ttf"),
    BOLD("/fonts/ArchivoNarrow-Bold.ttf");

    private final String resource;

    FontFile(String resource) {
        this.resource = resource;
    }

    public static FontFile of(Face face) {
        return face == Face.BOLD ? BOLD : REGULAR;
    }

    /** The whole file. */
    public byte[] bytes() {
        try (InputStream file = FontFile.class.getResourceAsStream(resource)) {
            if (file == null) {
                throw new IllegalStateException("the font " + resource + " is not on the class path");
            }
            return file.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
        }
    }
}
