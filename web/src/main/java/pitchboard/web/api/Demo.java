package pitchboard.web.api;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.By;
import pitchboard.store.library.Draft;
import pitchboard.store.library.JobLibrary;
import pitchboard.web.guarding.Caller;
import pitchboard.web.wire.Refusal;

/** The example job: the same file that lies in the folder of examples. */
public final class Demo {
    private static final String RESOURCE = "/pitchboard/web/demo/boathouse-loft.yaml";

    private Demo() {}

    /** Puts it into a library that has no job yet, so that there is something to look at. */
    public static void putIntoEmpty(JobLibrary library) throws FileTrouble {
        if (library.count() == 0) {
            library.create(draft(), new By(Caller.HERE.name(), "the example"));
        }
    }

    static Draft draft() {
        try (InputStream in = Demo.class.getResourceAsStream(RESOURCE)) {
            return WrittenDraft.fromFile(new String(in.readAllBytes(), StandardCharsets.UTF_8), Optional.empty());
        } catch (IOException broken) {
            throw new UncheckedIOException("the program's own example cannot be read", broken);
        } catch (Refusal broken) {
            throw new IllegalStateException("the program's own example cannot be read", broken);
        }
    }
}
