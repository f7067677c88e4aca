package pitchboard.intake.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.Written.Entry;
import pitchboard.measure.Tape;

/** A group of lines being written. A line that says no more than leaving it out is left out. */
public final class Lines {
    private final Tape.Units units;
    private final List<Entry> entries = new ArrayList<>();

    Lines(Tape.Units units) {
        this.units = units;
    }

    public <T> void put(Key<T> key, T value) {
        if (!key.unsaid().apply(units).equals(Optional.of(value))) {
            entries.add(new Entry(key.name(), key.form().write(value, units)));
        }
    }

    Written.Group group() {
        return new Written.Group(Spot.NOWHERE, entries);
    }
}
