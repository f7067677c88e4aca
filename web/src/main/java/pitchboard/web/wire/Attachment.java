package pitchboard.web.wire;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/** Names of files for somebody's disk, from words that anybody may have typed. */
public final class Attachment {
    private static final int LONGEST = 80;
    private static final String NOT_IN_NAMES = "/\\:*?\"<>|";
    /** RFC 5987, attr-char: what stands for itself in an encoded name. */
    private static final String PLAIN = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789!#$&+-.^_`|~";

    private Attachment() {}

    /**
     * Says in the answer that it is a file of this name (RFC 6266), once plainly and once with every letter.
     *
     * @param how {@code attachment} to be put on the disk, {@code inline} to be shown
     */
    public static void name(Context context, String how, String words, String ending) {
        String name = safe(words) + ending;
        context.header(
                "Content-Disposition", how + "; filename=\"" + ascii(name) + "\"; filename*=UTF-8''" + encoded(name));
    }

    /** A name that every system takes and that leads nowhere: no separators, no control characters, no dot in front. */
    public static String safe(String words) {
        StringBuilder name = new StringBuilder();
        words.codePoints()
                .map(letter -> isOutlaw(letter) ? ' ' : letter)
                .limit(LONGEST)
                .forEach(name::appendCodePoint);
        String plain = name.toString().strip().replaceAll(" +", " ").replaceAll("^[. ]+|[. ]+$", "");
        return plain.isEmpty() ? "job" : plain;
    }

    private static boolean isOutlaw(int letter) {
        int kind = Character.getType(letter);
        return NOT_IN_NAMES.indexOf(letter) >= 0
                || kind == Character.CONTROL
                || kind == Character.FORMAT
                || kind == Character.SURROGATE
                || kind == Character.LINE_SEPARATOR
                || kind == Character.PARAGRAPH_SEPARATOR;
    }

    private static String ascii(String name) {
        StringBuilder ascii = new StringBuilder();
        name.codePoints().forEach(letter -> ascii.append(letter >= ' ' && letter < 0x7f ? (char) letter : '_'));
        return ascii.toString().replace("\\", "_").replace("\"", "_");
    }

    private static String encoded(String name) {
        StringBuilder encoded = new StringBuilder();
        for (byte each : name.getBytes(StandardCharsets.UTF_8)) {
            if (PLAIN.indexOf(each) >= 0) {
                encoded.append((char) each);
            } else {
                encoded.append('%')
                        .append(Character.toUpperCase(Character.forDigit((each >> 4) & 15, 16)))
                        .append(Character.toUpperCase(Character.forDigit(each & 15, 16)));
            }
        }
        return encoded.toString();
    }
}
