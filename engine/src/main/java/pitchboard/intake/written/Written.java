package pitchboard.intake.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One piece of what was written: a text, a group of named pieces, or several in a row. */
public sealed interface Written {
    /** Nothing that people write by hand nests deeper; readers refuse what does. */
    int DEEPEST = 32;

    /** Where it begins. */
    Spot at();

    /** Words or numbers, exactly as typed: {@code no}, {@code 012} and {@code 1_000} are these very characters. */
    record Text(Spot at, String value) implements Written {
        public Text(String value) {
            this(Spot.NOWHERE, value);
        }
    }

    /** Named pieces, in the order they were written. Readers see to it that no name comes twice. */
    record Group(Spot at, List<Entry> entries) implements Written {
        public Group {
            entries = List.copyOf(entries);
        }

        public Optional<Entry> findEntry(String key) {
            return entries.stream().filter(entry -> entry.key().equals(key)).findFirst();
        }
    }

    /** Pieces in a row. */
    record Sequence(Spot at, List<Written> items) implements Written {
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /**
     * One named piece.
     *
     * @param at where the name stands
     */
    record Entry(Spot at, String key, Written value) {
        public Entry(String key, Written value) {
            this(Spot.NOWHERE, key, value);
        }
    }

    /** One answer for each kind; a new kind breaks every caller until it is handled. */
    default <T> T match(
            Function<? super Text, ? extends T> text,
            Function<? super Group, ? extends T> group,
            Function<? super Sequence, ? extends T> sequence) {
        if (this instanceof Text t) {
            return text.apply(t);
        }
        return this instanceof Group g ? group.apply(g) : sequence.apply((Sequence) this);
    }

    /** The same pieces, forgetting where they stood: two texts of one shape become equal. */
    default Written anywhere() {
        return match(
                text -> new Text(text.value()),
                group -> {
                    List<Entry> entries = new ArrayList<>();
                    group.entries()
                            .forEach(entry -> entries.add(
                                    new Entry(entry.key(), entry.value().anywhere())));
                    return new Group(Spot.NOWHERE, entries);
                },
                sequence -> new Sequence(
                        Spot.NOWHERE,
                        sequence.items().stream().map(Written::anywhere).toList()));
    }
}
