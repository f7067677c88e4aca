package pitchboard.intake.form;

import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.intake.written.Written;
import pitchboard.measure.Graduation;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** The finest line of the tape, as the distance to the next one. */
final class GraduationForm implements Form<Graduation> {
    private static final String INCHES = "1/8, 1/16, 1/32 or 1/64 in";
    private static final String MILLIMETRES = "1, 0.5 or 0.1 mm";

    @Override
    public Optional<Graduation> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Length> step = proof.findText(written, wanted).flatMap(text -> proof.findLength(text, false));
        Optional<Graduation> graduation = step.flatMap(length -> find(length, proof.units()));
        if (step.isPresent() && graduation.isEmpty()) {
            proof.note(written, wanted);
        }
        return graduation;
    }

    private static Optional<Graduation> find(Length step, Tape.Units units) {
        for (Graduation graduation : Graduation.values()) {
            boolean same = graduation.isOfTheInch() == (units == Tape.Units.INCHES);
            if (same && graduation.step().equals(step)) {
                return Optional.of(graduation);
            }
        }
        return Optional.empty();
    }

    @Override
    public Written write(Graduation value, Tape.Units units) {
        return new Written.Text(LengthText.exact(value.step(), units));
    }

    @Override
    public Shape shape() {
        return Shape.of(
                Shape.Kind.GRADUATION,
                Stream.of(Graduation.values())
                        .map(each -> LengthText.exact(each.step(), units(each)))
                        .toList());
    }

    private static Tape.Units units(Graduation graduation) {
        return graduation.isOfTheInch() ? Tape.Units.INCHES : Tape.Units.MILLIMETRES;
    }

    @Override
    public Written converted(Written written, Conversion units) {
        return units.findLength(written)
                .flatMap(step -> find(step, units.from()))
                .map(graduation -> units(graduation) == units.to() ? graduation : counterpart(graduation))
                .map(graduation -> write(graduation, units.to()))
                .orElse(written);
    }

    /** About as fine, on a tape of the other units. */
    private static Graduation counterpart(Graduation graduation) {
        return switch (graduation) {
            case EIGHTH_INCH, SIXTEENTH_INCH -> Graduation.MILLIMETRE;
            case THIRTY_SECOND_INCH -> Graduation.HALF_MILLIMETRE;
            case SIXTY_FOURTH_INCH -> Graduation.TENTH_MILLIMETRE;
            case MILLIMETRE -> Graduation.SIXTEENTH_INCH;
            case HALF_MILLIMETRE -> Graduation.THIRTY_SECOND_INCH;
            case TENTH_MILLIMETRE -> Graduation.SIXTY_FOURTH_INCH;
        };
    }

    @Override
    public String wanted(Tape.Units units) {
        return units == Tape.Units.INCHES ? INCHES : MILLIMETRES;
    }

    @Override
    public String example(Tape.Units units) {
        return units == Tape.Units.INCHES ? "1/16\"" : "1 mm";
    }
}
