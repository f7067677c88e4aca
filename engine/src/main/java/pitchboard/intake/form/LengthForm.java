package pitchboard.intake.form;

import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** A length as it is read off a tape. */
record LengthForm(Range range) implements Form<Length> {
    @Override
    public Optional<Length> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Length> length =
                proof.findText(written, wanted).flatMap(text -> proof.findLength(text, range.isSigned()));
        if (length.isPresent() && !range.holds(length.get())) {
            proof.note(written, wanted);
            return Optional.empty();
        }
        return length;
    }

    @Override
    public Written write(Length value, Tape.Units units) {
        return new Written.Text(LengthText.exact(value, units));
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.LENGTH);
    }

    @Override
    public Written converted(Written written, Conversion units) {
        return units.findLength(written)
                .map(length -> write(length, units.to()))
                .orElse(written);
    }

    @Override
    public String wanted(Tape.Units units) {
        return range.words(units);
    }

    @Override
    public String example(Tape.Units units) {
        return range.example(units);
    }
}
