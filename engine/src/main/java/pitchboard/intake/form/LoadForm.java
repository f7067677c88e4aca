package pitchboard.intake.form;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Decimals;
import pitchboard.measure.Reckoned;
import pitchboard.measure.Reckoned.Unit;
import pitchboard.measure.Tape;

/**
 * A load with its unit, above zero.
 *
 * @param units how each unit may be written; the first one of a unit is how it is written back
 * @param what such as {@code a load}
 */
record LoadForm(String what, List<Word> units, String inches, String millimetres) implements Form<Reckoned> {
    private static final double LEAST = 0.001;
    private static final double MOST = 100_000;
    private static final int PLACES = 3;
    private static final int LONGEST = 12;

    /** One way to write a unit. */
    record Word(String written, Unit unit) {}

    static final LoadForm ON_AREA = new LoadForm(
            "a load above zero",
            List.of(
                    new Word("psf", Unit.PSF),
                    new Word("lb/ft2", Unit.PSF),
                    new Word("lb/ft²", Unit.PSF),
                    new Word("kN/m2", Unit.KILONEWTON_PER_M2),
                    new Word("kN/m²", Unit.KILONEWTON_PER_M2),
                    new Word("kPa", Unit.KILONEWTON_PER_M2)),
            "40 psf",
            "2 kN/m2");

    static final LoadForm AT_POINT = new LoadForm(
            "a load above zero",
            List.of(new Word("lb", Unit.POUND), new Word("lbf", Unit.POUND), new Word("kN", Unit.KILONEWTON)),
            "300 lb",
            "2 kN");

    LoadForm {
        units = List.copyOf(units);
    }

    @Override
    public Optional<Reckoned> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Reckoned> load = proof.findText(written, wanted)
                .flatMap(text -> find(text.value().strip()));
        if (load.isEmpty() && written instanceof Written.Text) {
            proof.note(written, wanted);
        }
        return load;
    }

    private Optional<Reckoned> find(String text) {
        return units.stream()
                .filter(word -> text.endsWith(word.written()))
                .flatMap(word -> number(
                                text.substring(0, text.length() - word.written().length()))
                        .stream()
                        .map(number -> new Reckoned(number, word.unit())))
                .findFirst();
    }

    private static Optional<Double> number(String text) {
        String digits = text.strip();
        boolean plain = !digits.isEmpty()
                && digits.length() <= LONGEST
                && digits.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.')
                && digits.indexOf('.') == digits.lastIndexOf('.')
                && !digits.equals(".");
        return plain
                ? Optional.of(Decimals.rounded(Double.parseDouble(digits), PLACES))
                        .filter(number -> number >= LEAST && number <= MOST)
                : Optional.empty();
    }

    @Override
    public Written write(Reckoned value, Tape.Units tape) {
        String unit = units.stream()
                .filter(word -> word.unit() == value.unit())
                .map(Word::written)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(what + " does not count " + value.unit()));
        return new Written.Text(Decimals.trimmed(value.value(), PLACES) + " " + unit);
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.WORDS);
    }

    @Override
    public String wanted(Tape.Units tape) {
        return what + " with its unit, such as " + inches + " or " + millimetres;
    }

    @Override
    public String example(Tape.Units tape) {
        return tape == Tape.Units.INCHES ? inches : millimetres;
    }
}
