package pitchboard.web.wire;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;

/** What a request says in its body: a JSON object. */
public final class Ask {
    /** No job written by hand comes near it. */
    public static final int MOST_BYTES = 1_000_000;

    /** So much of what is refused is still taken and thrown away, so that the sender comes to hear why. */
    private static final int MOST_THROWN_AWAY = 16_000_000;

    private static final int UNREADABLE = 400;
    private static final int TOO_LARGE = 413;
    private static final int NOT_JSON = 415;

    private final Written.Group body;

    private Ask(Written.Group body) {
        this.body = body;
    }

    /**
     * Reads the body. Of one that is too large a bounded rest is read too and thrown away: a connection closed with
     * something unread is reset, and many a sender then never sees the answer.
     *
     * @throws Refusal when it is too large, no JSON, or JSON that cannot be read
     */
    public static Ask of(Context context) throws Refusal, IOException {
        String type = Optional.ofNullable(context.contentType()).orElse("").toLowerCase(Locale.ROOT);
        if (!type.equals("application/json") && !type.startsWith("application/json;")) {
            throw new Refusal(NOT_JSON, "send JSON, with Content-Type: application/json");
        }
        InputStream body = context.req().getInputStream();
        byte[] bytes = body.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throwAway(body);
            throw new Refusal(TOO_LARGE, "this is more than the " + MOST_BYTES + " bytes that are taken at once");
        }
        return read(text(bytes));
    }

    private static void throwAway(InputStream rest) throws IOException {
        byte[] some = new byte[8_192];
        int taken = 0;
        for (int read = 0; read >= 0 && taken < MOST_THROWN_AWAY; read = rest.read(some)) {
            taken += read;
        }
    }

    private static String text(byte[] bytes) throws Refusal {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException bad) {
            throw new Refusal(UNREADABLE, "the text is not UTF-8");
        }
    }

    private static Ask read(String json) throws Refusal {
        Transcript read = JsonReader.read(json);
        if (read instanceof Transcript.Illegible illegible) {
            throw new Refusal(UNREADABLE, reasons(illegible.problems()));
        }
        Written written = ((Transcript.Legible) read).written();
        if (written instanceof Written.Group group) {
            return new Ask(group);
        }
        throw new Refusal(UNREADABLE, "expected an object: {...}");
    }

    /** Problems of a text as reasons: where it is, and what is wrong there. */
    public static List<Refusal.Reason> reasons(List<Problem> problems) {
        return problems.stream()
                .map(problem -> new Refusal.Reason(problem.field(), problem.sentence()))
                .toList();
    }

    public Optional<String> findText(String name) {
        return body.findEntry(name)
                .map(Written.Entry::value)
                .flatMap(value -> value.match(
                        text -> Optional.of(text.value()), group -> Optional.empty(), sequence -> Optional.empty()));
    }

    /**
     * The words of a line.
     *
     * @param longest in characters
     */
    public String text(String name, int longest) throws Refusal {
        String text = findText(name).orElseThrow(() -> wrong(name, "text in double quotes"));
        if (text.length() > longest) {
            throw wrong(name, "at most " + longest + " characters");
        }
        return text;
    }

    /** A whole number from 1. */
    public int count(String name) throws Refusal {
        String text = findText(name).orElse("");
        if (!text.matches("[1-9][0-9]{0,8}")) {
            throw wrong(name, "a whole number from 1");
        }
        return Integer.parseInt(text);
    }

    public boolean truth(String name) throws Refusal {
        String text = findText(name).orElse("");
        if (!text.equals("true") && !text.equals("false")) {
            throw wrong(name, "true or false");
        }
        return text.equals("true");
    }

    /** A group of lines; empty when it is left out. */
    public Optional<Written.Group> findGroup(String name) throws Refusal {
        Optional<Written> value = body.findEntry(name).map(Written.Entry::value);
        if (value.isPresent() && !(value.get() instanceof Written.Group)) {
            throw wrong(name, "a group: {...}");
        }
        return value.map(Written.Group.class::cast);
    }

    public Written.Group group(String name) throws Refusal {
        return findGroup(name).orElseThrow(() -> wrong(name, "a group: {...}"));
    }

    /** The refusal of a request for one of its lines. */
    public static Refusal wrong(String name, String expected) {
        return new Refusal(UNREADABLE, List.of(new Refusal.Reason(name, name + ": expected " + expected)));
    }
}
