package pitchboard.cli;

import java.util.Optional;
import java.util.regex.Pattern;

/** Whether a text is JSON (RFC 8259), by taking away what is well-formed until nothing is left. */
final class JsonShape {
    private static final Pattern STRING =
            Pattern.compile("\"(?:[^\"\\\\\\x00-\\x1f]|\\\\(?:[\"\\\\/bfnrt]|u[0-9a-fA-F]{4}))*+\"");
    private static final Pattern SCALAR =
            Pattern.compile("-?(?:0|[1-9][0-9]*+)(?:\\.[0-9]++)?(?:[eE][+-]?[0-9]++)?|true|false|null");

    private JsonShape() {}

    /** Empty when the text is well-formed. Strings become s, other scalars v, then innermost groups become v. */
    static Optional<String> complaint(String text) {
        String rest = STRING.matcher(text).replaceAll("s");
        rest = SCALAR.matcher(rest).replaceAll("v").replaceAll("\\s+", "");
        String before;
        do {
            before = rest;
            rest = rest.replaceAll("\\{(?:s:[sv](?:,s:[sv])*+)?\\}", "v").replaceAll("\\[(?:[sv](?:,[sv])*+)?\\]", "v");
        } while (!rest.equals(before));
        return rest.equals("v") ? Optional.empty() : Optional.of(rest.substring(0, Math.min(200, rest.length())));
    }
}
