package pitchboard.web.guarding;

import io.javalin.http.Context;
import java.util.Optional;

/**
 * Who sends a request.
 *
 * @param name what versions call it
 * @param device the paired device; empty for a browser on this very machine
 */
public record Caller(String name, Optional<String> device) {
    private static final String ATTRIBUTE = "pitchboard.caller";

    /** The machine that the server runs on. */
    public static final Caller HERE = new Caller("this computer", Optional.empty());

    /** Who was found to send this request. */
    public static Caller of(Context context) {
        Caller found = context.attribute(ATTRIBUTE);
        if (found == null) {
            throw new IllegalStateException("nobody was at the door");
        }
        return found;
    }

    void enter(Context context) {
        context.attribute(ATTRIBUTE, this);
    }

    public boolean isHere() {
        return device.isEmpty();
    }
}
