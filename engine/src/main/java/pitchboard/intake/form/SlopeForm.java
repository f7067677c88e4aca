package pitchboard.intake.form;

import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeReader;

/** How much something falls, as a drop over a distance: {@code 1 in 60}, {@code 1/4" per foot}, {@code 2 %}. */
record SlopeForm(Ratio steepest) implements Form<Ratio> {
    private static final Ratio PER_CENT = Ratio.of(1, 100);

    @Override
    public Optional<Ratio> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Ratio> slope = proof.findText(written, wanted)
                .flatMap(text -> find(text.value().strip()))
                .filter(ratio -> ratio.compareTo(steepest) <= 0 && isShort(ratio));
        if (slope.isEmpty() && written instanceof Written.Text) {
            proof.note(written, wanted);
        }
        return slope;
    }

    /** Whether the ratio can be written back with numbers that can be read again. */
    private static boolean isShort(Ratio ratio) {
        return ratio.numerator().bitLength() < 30 && ratio.denominator().bitLength() < 30;
    }

    private static Optional<Ratio> find(String text) {
        if (text.equalsIgnoreCase("level")) {
            return Optional.of(Ratio.ZERO);
        }
        if (text.endsWith("%")) {
            return number(text.substring(0, text.length() - 1)).map(PER_CENT::times);
        }
        return between(text, "per")
                .flatMap(parts -> length(parts[0]).flatMap(drop -> one(parts[1]).map(drop::over)))
                .or(() -> between(text, "in").flatMap(SlopeForm::over))
                .or(() -> between(text, ":").flatMap(SlopeForm::over));
    }

    private static Optional<Ratio> over(String[] parts) {
        Optional<Ratio> distance = number(parts[1]).filter(ratio -> !ratio.isZero());
        return number(parts[0]).flatMap(drop -> distance.map(drop::dividedBy));
    }

    private static Optional<String[]> between(String text, String word) {
        String[] parts = text.split(word, -1);
        return parts.length == 2 ? Optional.of(parts) : Optional.empty();
    }

    /** The tape reader knows numbers; a number of millimetres is the number itself. */
    private static Optional<Ratio> number(String text) {
        boolean bare = !text.isBlank() && text.chars().allMatch(c -> (c >= '0' && c <= '9') || c == '.' || c == ' ');
        return bare ? length(text).map(Length::inMm) : Optional.empty();
    }

    private static Optional<Length> length(String text) {
        return TapeReader.read(text, Tape.Units.MILLIMETRES).findLength();
    }

    private static Optional<Length> one(String unit) {
        return unit.isBlank() ? Optional.empty() : length("1 " + unit);
    }

    @Override
    public Written write(Ratio value, Tape.Units units) {
        return new Written.Text(text(value));
    }

    static String text(Ratio slope) {
        return slope.isZero() ? "level" : slope.numerator() + " in " + slope.denominator();
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.SLOPE);
    }

    @Override
    public String wanted(Tape.Units units) {
        String most = Decimals.trimmed(steepest.dividedBy(PER_CENT), 1);
        return "level, or a slope of at most " + most + " % such as 1 in 60, 1/4\" per foot or 2 %";
    }

    @Override
    public String example(Tape.Units units) {
        return "1 in 60";
    }
}
