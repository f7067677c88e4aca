package pitchboard.intake.form;

import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Angle;
import pitchboard.measure.Area;
import pitchboard.measure.Count;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeReader;

/**
 * A limit of a rule, whose kind shows in how it is written. A plain whole number is a number of things; everything else
 * needs its unit, because the writer's units are not known here.
 */
final class LimitForm implements Form<Quantity> {
    private static final Form<Integer> THINGS = new CountForm(0, 9999, 16);
    private static final String DEGREES = " degrees";
    private static final String SQUARE_INCHES = " sq in";
    private static final int MOST_PLACES = 6;
    private static final Ratio STEEPEST = Ratio.of(2);

    @Override
    public Optional<Quantity> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Quantity> limit = proof.findText(written, wanted)
                .flatMap(text -> find(text.value().strip()));
        if (limit.isEmpty() && written instanceof Written.Text) {
            proof.note(written, wanted);
        }
        return limit;
    }

    private static Optional<Quantity> find(String text) {
        if (text.endsWith(DEGREES)) {
            return number(text, DEGREES).map(Angle::new);
        }
        if (text.endsWith(SQUARE_INCHES)) {
            return number(text, SQUARE_INCHES).map(Area::new);
        }
        Optional<Quantity> things =
                THINGS.read(new Written.Text(text), Proof.unread()).map(Count::new);
        return things.or(() -> new SlopeForm(STEEPEST).read(new Written.Text(text), Proof.unread()))
                .or(() -> Proof.begin().findLength(new Written.Text(text), false));
    }

    private static Optional<Ratio> number(String text, String unit) {
        String digits = text.substring(0, text.length() - unit.length());
        return TapeReader.read(digits + " mm", Tape.Units.MILLIMETRES)
                .findLength()
                .map(Length::inMm);
    }

    @Override
    public Written write(Quantity value, Tape.Units units) {
        return new Written.Text(text(value, units));
    }

    private static String text(Quantity value, Tape.Units units) {
        if (value instanceof Length length) {
            return LengthText.exact(length, units);
        }
        if (value instanceof Angle angle) {
            return Decimals.trimmed(angle.degrees(), MOST_PLACES) + DEGREES;
        }
        if (value instanceof Area area) {
            return Decimals.trimmed(area.squareInches(), MOST_PLACES) + SQUARE_INCHES;
        }
        if (value instanceof Count count) {
            return Integer.toString(count.value());
        }
        if (value instanceof Ratio ratio) {
            return SlopeForm.text(ratio);
        }
        throw new IllegalArgumentException("a limit on " + value + " is written in degrees");
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.LIMIT);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a limit with its unit such as 8 1/4\", 210 mm, 42 degrees, 1 in 48 or 75 sq in, or a number of things";
    }

    @Override
    public String example(Tape.Units units) {
        return units == Tape.Units.INCHES ? "8 1/4\"" : "210 mm";
    }
}
