package pitchboard.intake.form;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/**
 * One word or number that means what a function makes of it.
 *
 * @param read empty for text that means nothing
 * @param write text that is read as the same value again
 */
record ParsedForm<T>(Function<String, Optional<T>> read, Function<T, String> write, String wantedWords, String often)
        implements Form<T> {
    @Override
    public Optional<T> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Written.Text> text = proof.findText(written, wanted);
        Optional<T> value = text.flatMap(typed -> read.apply(typed.value().strip()));
        if (value.isEmpty() && text.isPresent()) {
            proof.note(written, wanted);
        }
        return value;
    }

    @Override
    public Written write(T value, Tape.Units units) {
        return new Written.Text(write.apply(value));
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.WORDS);
    }

    @Override
    public String wanted(Tape.Units units) {
        return wantedWords;
    }

    @Override
    public String example(Tape.Units units) {
        return often;
    }
}
