package pitchboard.intake.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Several of one kind, each behind a dash. A single one may be written without the dash. */
record ListForm<T>(Form<T> item, int least, int most) implements Form<List<T>> {
    @Override
    public Optional<List<T>> read(Written written, Proof proof) {
        List<Written> items = written instanceof Written.Sequence sequence ? sequence.items() : List.of(written);
        if (items.size() < least || items.size() > most) {
            proof.note(written, proof.phrase(this));
            return Optional.empty();
        }
        List<T> values = new ArrayList<>();
        for (Written each : items) {
            String number = Integer.toString(values.size() + 1);
            values.add(item.read(each, proof.under(number, each.at())).orElseGet(item::standIn));
        }
        return Optional.of(values);
    }

    @Override
    public Written write(List<T> values, Tape.Units units) {
        return new Written.Sequence(
                Spot.NOWHERE,
                values.stream().map(value -> item.write(value, units)).toList());
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.LIST);
    }

    @Override
    public Written converted(Written written, Conversion units) {
        return written instanceof Written.Sequence sequence
                ? new Written.Sequence(
                        sequence.at(),
                        sequence.items().stream()
                                .map(each -> item.converted(each, units))
                                .toList())
                : item.converted(written, units);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a list of " + least + " to " + most + ", each with " + item.wanted(units);
    }

    @Override
    public String onPage(Tape.Units units) {
        return "a list of " + least + " to " + most + ", each with " + item.onPage(units);
    }

    @Override
    public String example(Tape.Units units) {
        String one = item.example(units);
        return "[ " + one + (", " + one).repeat(least - 1) + " ]";
    }

    @Override
    public List<Key<?>> keys() {
        return item.keys();
    }

    @Override
    public List<T> standIn() {
        List<T> values = new ArrayList<>();
        while (values.size() < least) {
            values.add(item.standIn());
        }
        return values;
    }
}
