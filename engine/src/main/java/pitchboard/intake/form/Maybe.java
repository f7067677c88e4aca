package pitchboard.intake.form;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** A value that may be missing. Nothing is never written: the whole line is left out. */
record Maybe<T>(Form<T> form) implements Form<Optional<T>> {
    @Override
    public Optional<Optional<T>> read(Written written, Proof proof) {
        Optional<T> value = form.read(written, proof);
        return value.isPresent() ? Optional.of(value) : Optional.empty();
    }

    @Override
    public Written write(Optional<T> value, Tape.Units units) {
        return form.write(value.orElseThrow(), units);
    }

    @Override
    public Shape shape() {
        return form.shape();
    }

    @Override
    public Written converted(Written written, Conversion units) {
        return form.converted(written, units);
    }

    @Override
    public String wanted(Tape.Units units) {
        return form.wanted(units);
    }

    @Override
    public String onPage(Tape.Units units) {
        return form.onPage(units);
    }

    @Override
    public String example(Tape.Units units) {
        return form.example(units);
    }

    @Override
    public List<Key<?>> keys() {
        return form.keys();
    }

    @Override
    public Optional<T> standIn() {
        return Optional.of(form.standIn());
    }
}
