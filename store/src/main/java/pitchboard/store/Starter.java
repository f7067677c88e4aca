package pitchboard.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The job file a new job starts from: complete, with a comment on every line. */
public final class Starter {
    private Starter() {}

    public static String text() {
        try (InputStream in = Starter.class.getResourceAsStream("starter.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own starter file cannot be read", broken);
        }
    }
}
