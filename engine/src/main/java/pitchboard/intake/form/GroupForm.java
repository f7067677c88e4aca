package pitchboard.intake.form;

import java.util.List;
import java.util.Optional;
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
        Optional<Written.Group> group = findGroup(written);
        if (group.isEmpty()) {
            proof.note(written, wanted(proof.units()));
            return Optional.empty();
        }
        group.get().entries().stream()
                .filter(entry -> keys().stream().noneMatch(key -> key.name().equals(entry.key())))
                .forEach(stranger -> refuse(stranger, proof));
        return Optional.of(read(Fields.of(group.get(), proof)));
    }

    private Optional<Written.Group> findGroup(Written written) {
        return written.match(
                text -> lead().map(key -> groupOf(new Entry(text.at(), key.name(), text))),
                Optional::of,
                sequence -> Optional.empty());
    }

    private static Written.Group groupOf(Entry entry) {
        return new Written.Group(entry.at(), List.of(entry));
    }

    private void refuse(Entry stranger, Proof proof) {
        proof.note(stranger.at(), stranger.key(), advice(stranger.key()));
    }

    /** The known key that is nearest, the group below where it belongs, or all keys there are. */
    private String advice(String unknown) {
        List<String> names = keys().stream().map(Key::name).toList();
        Optional<String> near = Nearest.find(unknown, names);
        if (near.isPresent()) {
            return "\"" + near.get() + "\"";
        }
        return keys().stream()
                .filter(key -> key.form().keys().stream()
                        .anyMatch(inner -> inner.name().equals(unknown)))
                .findFirst()
                .map(key -> "this line under \"" + key.name() + ":\"")
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
    public String wanted(Tape.Units units) {
        return "lines such as " + example(units);
    }

    @Override
    public String example(Tape.Units units) {
        boolean anyNeeded = keys().stream().anyMatch(Key::isNeeded);
        List<String> lines = keys().stream()
                .filter(key -> key.isNeeded() || !anyNeeded)
                .map(key -> key.example(units))
                .toList();
        return "{ " + String.join(", ", lines) + " }";
    }

    @Override
    public final T standIn() {
        return read(Fields.of(new Written.Group(Spot.NOWHERE, List.of()), Proof.unread()));
    }
}
