package pitchboard.intake.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.Written.Entry;
import pitchboard.measure.Tape;

/**
 * A group of lines that together make one value. A group with a {@link #lead} may be written as the value of that line
 * alone: {@code risers: open} is short for {@code risers: { kind: open }}.
 */
public abstract class GroupForm<T> implements Form<T> {
    /** All lines, in the order they are written. */
    @Override
    public abstract List<Key<?>> keys();

    /** The line whose value may stand for the whole group. */
    protected Optional<Key<?>> lead() {
        return Optional.empty();
    }

    protected abstract T read(Fields in);

    protected abstract void write(T value, Lines out);

    @Override
    public final Optional<T> read(Written written, Proof proof) {
        Optional<Fields> lines = findLines(written, proof);
        if (lines.isEmpty()) {
            proof.note(written, proof.phrase(this));
        }
        return lines.map(this::read);
    }

    private Optional<Fields> findLines(Written written, Proof proof) {
        return written.match(
                text -> lead().map(key -> Fields.ofOne(new Entry(text.at(), key.name(), text), proof)),
                group -> Optional.of(known(group, proof)),
                sequence -> Optional.empty());
    }

    private Fields known(Written.Group group, Proof proof) {
        group.entries().stream()
                .filter(entry -> keys().stream().noneMatch(key -> key.name().equals(entry.key())))
                .forEach(stranger -> refuse(stranger, proof));
        return Fields.of(group, proof);
    }

    private void refuse(Entry stranger, Proof proof) {
        proof.note(stranger.at(), stranger.key(), advice(stranger.key()));
    }

    /** The known key that is nearest, the group below where it belongs, or all keys there are. */
    private String advice(String unknown) {
        List<String> names = keys().stream().map(Key::name).toList();
        Optional<String> near = Nearest.find(unknown, names);
        if (near.isPresent()) {
            return Problem.quoted(near.get());
        }
        return keys().stream()
                .filter(key -> key.form().keys().stream()
                        .anyMatch(inner -> inner.name().equals(unknown)))
                .findFirst()
                .map(key -> "this line under " + Problem.quoted(key.name() + ":"))
                .orElse("one of " + String.join(", ", names));
    }

    @Override
    public final Written write(T value, Tape.Units units) {
        Lines out = new Lines(units);
        write(value, out);
        Written.Group group = out.group();
        boolean leadAlone = group.entries().size() == 1
                && lead().filter(key -> key.name().equals(group.entries().get(0).key()))
                        .isPresent();
        return leadAlone ? group.entries().get(0).value() : group;
    }

    @Override
    public final Shape shape() {
        return Shape.group(lead().map(Key::name));
    }

    @Override
    public final Written converted(Written written, Conversion units) {
        return written.match(
                text -> lead().<Written>map(key -> key.form().converted(text, units))
                        .orElse(text),
                group -> converted(group, units),
                sequence -> sequence);
    }

    private Written converted(Written.Group group, Conversion units) {
        List<Entry> entries = new ArrayList<>();
        for (Entry entry : group.entries()) {
            Written value = findKey(entry.key())
                    .map(key -> key.form().converted(entry.value(), units))
                    .orElse(entry.value());
            entries.add(new Entry(entry.at(), entry.key(), value));
        }
        for (Key<?> key : keys()) {
            if (group.findEntry(key.name()).isEmpty()) {
                key.findKept(units).ifPresent(value -> entries.add(place(key, entries), new Entry(key.name(), value)));
            }
        }
        return new Written.Group(group.at(), entries);
    }

    private Optional<Key<?>> findKey(String name) {
        return keys().stream().filter(key -> key.name().equals(name)).findFirst();
    }

    /** Before the first line that comes later in the group. */
    private int place(Key<?> key, List<Entry> entries) {
        List<String> names = keys().stream().map(Key::name).toList();
        int own = names.indexOf(key.name());
        for (int i = 0; i < entries.size(); i++) {
            if (names.indexOf(entries.get(i).key()) > own) {
                return i;
            }
        }
        return entries.size();
    }

    @Override
    public String wanted(Tape.Units units) {
        return lead().map(key -> key.form().wanted(units)).orElseGet(() -> "lines such as " + example(units));
    }

    @Override
    public String onPage(Tape.Units units) {
        return lead().map(key -> key.form().wanted(units) + ", or the lines below")
                .orElse("the lines below");
    }

    @Override
    public String example(Tape.Units units) {
        return lead().map(key -> key.form().example(units)).orElseGet(() -> example(units, shown()));
    }

    /** These lines, on one. */
    private static String example(Tape.Units units, List<Key<?>> keys) {
        return "{ "
                + String.join(", ", keys.stream().map(key -> key.example(units)).toList()) + " }";
    }

    /** The lines of the example: enough of them that it can be read. */
    protected List<Key<?>> shown() {
        List<Key<?>> needed = new ArrayList<>(keys());
        needed.removeIf(key -> !key.isNeeded());
        return needed.isEmpty() ? keys() : needed;
    }

    @Override
    public final T standIn() {
        return read(Fields.of(new Written.Group(Spot.NOWHERE, List.of()), Proof.unread()));
    }
}
