package pitchboard.browser;

import java.util.List;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;

/** One kind of thing that the page can ask for. */
interface Task {
    /** What stands behind {@code "do"}. */
    String name();

    /** The lines its requests may have besides {@code "do"}. */
    List<String> keys();

    /** Reads a request. What comes back is asked for the answer only when nothing was wrong with the request. */
    Supplier<Json> read(Asked asked);
}
