package pitchboard.intake.form;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** A word that stands for one value, or any other value as its own form has it. Capitals do not count. */
record WordOr<T>(String word, T value, Form<T> other) implements Form<T> {
    @Override
    public Optional<T> read(Written written, Proof proof) {
        return isWord(written) ? Optional.of(value) : other.read(written, proof.or(word));
    }

    private boolean isWord(Written written) {
        return written instanceof Written.Text text && text.value().equalsIgnoreCase(word);
    }

    @Override
    public Written write(T written, Tape.Units units) {
        return written.equals(value) ? new Written.Text(word) : other.write(written, units);
    }

    @Override
    public Shape shape() {
        return other.shape().or(word);
    }

    @Override
    public Written converted(Written written, Conversion units) {
        return isWord(written) ? written : other.converted(written, units);
    }

    @Override
    public String wanted(Tape.Units units) {
        return word + ", or " + other.wanted(units);
    }

    @Override
    public String onPage(Tape.Units units) {
        return word + ", or " + other.onPage(units);
    }

    @Override
    public String example(Tape.Units units) {
        return other.example(units);
    }

    @Override
    public List<Key<?>> keys() {
        return other.keys();
    }

    @Override
    public T standIn() {
        return value;
    }
}
