package pitchboard.intake.form;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.Written.Entry;
import pitchboard.measure.Tape;

/** A group of lines being read: gives the value of each line, and takes what is to be said against it. */
public final class Fields {
    private final Written.Group group;
    private final Proof proof;
    /** Whether the group was written as the value of its first line alone, which then has no name. */
    private final boolean nameless;

    private final Set<String> troubled;

    private Fields(Written.Group group, Proof proof, boolean nameless, Set<String> troubled) {
        this.group = group;
        this.proof = proof;
        this.nameless = nameless;
        this.troubled = troubled;
    }

    static Fields of(Written.Group group, Proof proof) {
        return new Fields(group, proof, false, new HashSet<>());
    }

    static Fields ofOne(Entry entry, Proof proof) {
        return new Fields(new Written.Group(entry.at(), List.of(entry)), proof, true, new HashSet<>());
    }

    /** The same lines, with bare numbers counting these. */
    public Fields in(Tape.Units bareNumbers) {
        return new Fields(group, proof.in(bareNumbers), nameless, troubled);
    }

    /** Where the group stands in its text. */
    public Spot place() {
        return proof.place();
    }

    /** What messages show lengths in. */
    public Tape.Units units() {
        return proof.units();
    }

    /** Whether the line is there at all. */
    public boolean says(Key<?> key) {
        return group.findEntry(key.name()).isPresent();
    }

    /** The value of a line; one that stands in when the line is missing or unreadable, which is noted. */
    public <T> T get(Key<T> key) {
        Optional<Entry> entry = group.findEntry(key.name());
        if (entry.isPresent()) {
            return read(key, entry.get());
        }
        Optional<T> unsaid = key.unsaid().apply(proof.units());
        if (unsaid.isEmpty()) {
            miss(key, "");
        }
        return unsaid.orElseGet(key::standIn);
    }

    /** The value of an open line that cannot stay open here, because of what another line says. */
    public <T> T demand(Key<Optional<T>> key, String because) {
        Optional<T> value = get(key);
        if (value.isEmpty() && !troubled.contains(key.name())) {
            miss(key, " " + because);
        }
        return value.orElseGet(() -> key.form().standIn().orElseThrow());
    }

    private <T> T read(Key<T> key, Entry entry) {
        Proof inner = nameless ? proof : proof.under(key.name(), entry.at());
        int before = proof.count();
        Optional<T> value = Optional.empty();
        if (entry.value() instanceof Written.Text text && text.value().isBlank()) {
            inner.note(
                    entry.at(), "", "something after the colon, as in " + Problem.quoted(key.example(proof.units())));
        } else {
            value = key.form().read(entry.value(), inner);
        }
        if (value.isEmpty() || proof.count() > before) {
            troubled.add(key.name());
        }
        return value.orElseGet(key::standIn);
    }

    private void miss(Key<?> key, String because) {
        troubled.add(key.name());
        proof.under(key.name(), proof.place())
                .note(proof.place(), "", "a line such as " + Problem.quoted(key.example(proof.units())) + because);
    }

    /** Whether all these lines could be read, so that they can be held against each other. */
    public boolean areSound(Key<?>... keys) {
        for (Key<?> key : keys) {
            if (troubled.contains(key.name())) {
                return false;
            }
        }
        return true;
    }

    /** Says something against what a line says; against the whole group when the line is not there. */
    public void refuse(Key<?> key, String expected) {
        troubled.add(key.name());
        Optional<Entry> entry = group.findEntry(key.name());
        Spot place = entry.map(Entry::at).orElse(proof.place());
        Proof inner = proof.under(key.name(), place);
        entry.ifPresentOrElse(there -> inner.note(there.value(), expected), () -> inner.note(place, "", expected));
    }

    /** Refuses a line that belongs to other kinds than the one chosen. */
    public void forbid(Key<?> key, String because) {
        if (says(key)) {
            refuse(key, "no such line " + because);
        }
    }
}
