package pitchboard.web.api;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import pitchboard.web.jobs.Draft;
import pitchboard.web.wire.Refusal;

/** The example job: the same file that lies in the folder of examples. */
public final class Demo {
    private static final String RESOURCE = "/pitchboard/web/demo/boathouse-loft.yaml";

    private Demo() {}

    /** The file, with its comments. */
    public static String text() {
        try (InputStream in = Demo.class.getResourceAsStream(RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own example cannot be read", broken);
        }
    }

    public static Draft draft() {
        try {
            return Imported.draft(text(), Optional.empty());
        } catch (Refusal broken) {
            throw new IllegalStateException("the program's own example cannot be read", broken);
        }
    }
}
