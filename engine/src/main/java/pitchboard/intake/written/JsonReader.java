package pitchboard.intake.written;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pitchboard.intake.written.Written.Entry;
import pitchboard.intake.written.Written.Group;
import pitchboard.intake.written.Written.Sequence;
import pitchboard.intake.written.Written.Text;

/**
 * Reads JSON (RFC 8259) strictly. Numbers, {@code true} and {@code false} stay the text that was typed. What the
 * standard leaves open is refused: a name that comes twice, {@code null}, deep nesting, half a surrogate pair.
 */
public final class JsonReader {
    private final JsonCursor cursor;
    private final List<Problem> problems = new ArrayList<>();
    private int depth;

    private JsonReader(String json) {
        this.cursor = new JsonCursor(json);
    }

    public static Transcript read(String json) {
        JsonReader reader = new JsonReader(json);
        try {
            return reader.whole();
        } catch (JsonCursor.Unreadable refusal) {
            reader.problems.add(refusal.problem());
            return new Transcript.Illegible(reader.problems);
        }
    }

    private Transcript whole() {
        cursor.skipBlanks();
        Written written = value();
        cursor.skipBlanks();
        if (!cursor.isAtEnd()) {
            throw cursor.refuse("nothing after the last bracket");
        }
        return problems.isEmpty() ? new Transcript.Legible(written) : new Transcript.Illegible(problems);
    }

    private Written value() {
        Spot at = cursor.spot();
        return switch (cursor.peek()) {
            case '{' -> nested(at, true);
            case '[' -> nested(at, false);
            case '"' -> new Text(at.right(1), cursor.string());
            default -> new Text(at, cursor.literal());
        };
    }

    private Written nested(Spot at, boolean group) {
        if (depth == Written.DEEPEST) {
            throw cursor.refuse("fewer brackets inside brackets, " + Written.DEEPEST + " at most");
        }
        depth++;
        Written written = group ? group(at) : sequence(at);
        depth--;
        return written;
    }

    private Group group(Spot at) {
        List<Entry> entries = new ArrayList<>();
        Set<String> names = new HashSet<>();
        cursor.next();
        cursor.skipBlanks();
        if (cursor.skip('}')) {
            return new Group(at, entries);
        }
        do {
            cursor.skipBlanks();
            Entry entry = entry();
            if (!names.add(entry.key())) {
                problems.add(new Problem(entry.at(), entry.key(), entry.key(), "each name once in its group"));
            }
            entries.add(entry);
        } while (another('}'));
        return new Group(at, entries);
    }

    private Entry entry() {
        if (cursor.peek() != '"') {
            throw cursor.refuse("a name in double quotes");
        }
        Spot at = cursor.spot().right(1);
        String key = cursor.string();
        cursor.skipBlanks();
        if (!cursor.skip(':')) {
            throw cursor.refuse("a colon after the name " + Problem.quoted(key));
        }
        cursor.skipBlanks();
        return new Entry(at, key, value());
    }

    private Sequence sequence(Spot at) {
        List<Written> items = new ArrayList<>();
        cursor.next();
        cursor.skipBlanks();
        if (cursor.skip(']')) {
            return new Sequence(at, items);
        }
        do {
            cursor.skipBlanks();
            items.add(value());
        } while (another(']'));
        return new Sequence(at, items);
    }

    private boolean another(char close) {
        cursor.skipBlanks();
        if (cursor.skip(',')) {
            return true;
        }
        if (!cursor.skip(close)) {
            throw cursor.refuse("a comma, or " + close + " to close the bracket");
        }
        return false;
    }
}
