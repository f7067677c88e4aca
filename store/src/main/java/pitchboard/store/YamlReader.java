package pitchboard.store;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.Written.Entry;

/**
 * Reads YAML as people write lists and groups by hand. Nothing is resolved: {@code no}, {@code 012} and {@code 1_000}
 * stay the text that was typed. What can hide something is refused: anchors, references, tags, a second document.
 */
final class YamlReader {
    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setUseMarks(true)
            .setCodePointLimit(WrittenFile.MOST_BYTES)
            .build();

    private final Iterator<Event> events;
    private final List<Problem> problems = new ArrayList<>();
    /** Where in the problems the first anchor or reference stands, and how many there are. */
    private int firstReference;

    private int references;
    private int depth;

    private YamlReader(String yaml) {
        this.events = new Parse(SETTINGS).parseString(yaml).iterator();
    }

    static Transcript read(String yaml) {
        try {
            return new YamlReader(yaml).whole();
        } catch (TooDeep stop) {
            return new Transcript.Illegible(stop.problem);
        } catch (YamlEngineException refusal) {
            return new Transcript.Illegible(YamlTrouble.problem(yaml, refusal));
        }
    }

    private Transcript whole() {
        events.next();
        if (events.next().getEventId() == Event.ID.StreamEnd) {
            return new Transcript.Illegible(new Problem(
                    Spot.START, "", "", "lines such as \"job: Stair to the sail loft\", not comments alone"));
        }
        Written written = node(events.next(), "");
        events.next();
        Event end = events.next();
        if (end.getEventId() != Event.ID.StreamEnd) {
            problems.add(new Problem(spot(end), "", "---", "one document in the file"));
        }
        if (references > 1) {
            problems.set(firstReference, withTheOthers(problems.get(firstReference)));
        }
        return problems.isEmpty() ? new Transcript.Legible(written) : new Transcript.Illegible(problems);
    }

    private Problem withTheOthers(Problem first) {
        int more = references - 1;
        return new Problem(
                first.at(), first.field(), first.read(), first.expected() + "; and " + more + " more such further on");
    }

    private Written node(Event event, String field) {
        refuseWhatHides(event, field);
        if (event instanceof ScalarEvent scalar) {
            return text(scalar);
        }
        if (event instanceof AliasEvent) {
            return new Written.Text(spot(event), "");
        }
        if (depth == Written.DEEPEST) {
            String expected = "fewer groups inside groups, " + Written.DEEPEST + " at most";
            throw new TooDeep(new Problem(spot(event), "", "", expected));
        }
        depth++;
        Written written = event instanceof MappingStartEvent ? group(event, field) : sequence(event, field);
        depth--;
        return written;
    }

    private static Written.Text text(ScalarEvent scalar) {
        boolean quoted = scalar.isSQuoted() || scalar.isDQuoted();
        return new Written.Text(spot(scalar).right(quoted ? 1 : 0), scalar.getValue());
    }

    private void refuseWhatHides(Event event, String field) {
        Optional<String> tag = event instanceof ScalarEvent scalar ? scalar.getTag() : Optional.empty();
        if (event instanceof CollectionStartEvent start) {
            tag = start.getTag();
        }
        tag.ifPresent(
                name -> refuse(event, field, "!" + name, "plain text without a tag (quote it if it begins with !)"));
        if (event instanceof AliasEvent alias) {
            refuseReference(
                    event,
                    field,
                    "*" + alias.getAlias(),
                    "the value itself, written out, instead of a reference to it");
        } else if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            refuseReference(
                    event,
                    field,
                    "&" + node.getAnchor().get(),
                    "a value without an anchor (quote it if it begins with &)");
        }
    }

    /** Anchors and references can be thousands: the first is told, the others are counted. */
    private void refuseReference(Event event, String field, String read, String expected) {
        if (references == 0) {
            firstReference = problems.size();
            refuse(event, field, read, expected);
        }
        references++;
    }

    private void refuse(Event event, String field, String read, String expected) {
        problems.add(new Problem(spot(event), field, read, expected));
    }

    private Written.Group group(Event start, String field) {
        Map<String, Integer> lines = new LinkedHashMap<>();
        List<Entry> entries = new ArrayList<>();
        Event next = events.next();
        while (next.getEventId() != Event.ID.MappingEnd) {
            Written key = node(next, field);
            String name = key instanceof Written.Text text ? text.value() : "";
            if (!(key instanceof Written.Text)) {
                refuse(next, field, "", "a plain name before the colon");
            }
            Integer before = lines.putIfAbsent(name, key.at().line());
            if (before != null) {
                refuse(next, field, name, "each name once in its group: this one is in line " + before + " already");
            }
            String inner = field.isEmpty() ? name : field + " > " + name;
            entries.add(new Entry(key.at(), name, node(events.next(), inner)));
            next = events.next();
        }
        return new Written.Group(spot(start), entries);
    }

    private Written.Sequence sequence(Event start, String field) {
        List<Written> items = new ArrayList<>();
        Event next = events.next();
        while (next.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(next, field + " > " + (items.size() + 1)));
            next = events.next();
        }
        return new Written.Sequence(spot(start), items);
    }

    private static Spot spot(Event event) {
        return event.getStartMark().map(YamlReader::spot).orElse(Spot.NOWHERE);
    }

    static Spot spot(Mark mark) {
        return new Spot(mark.getLine() + 1, mark.getColumn() + 1);
    }

    /** Carries a refusal out of the nesting; never leaves this class. */
    private static final class TooDeep extends RuntimeException {
        private final transient Problem problem;

        TooDeep(Problem problem) {
            super(problem.sentence(), null, false, false);
            this.problem = problem;
        }
    }
}
