package pitchboard.intake.form;

import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** A number of things. */
record CountForm(int least, int most, int often) implements Form<Integer> {
    private static final int MOST_DIGITS = 9;

    @Override
    public Optional<Integer> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<Integer> count = proof.findText(written, wanted)
                .filter(text -> isNumber(text.value()))
                .map(text -> Integer.parseInt(text.value()))
                .filter(number -> number >= least && number <= most);
        if (count.isEmpty() && written instanceof Written.Text) {
            proof.note(written, wanted);
        }
        return count;
    }

    private static boolean isNumber(String text) {
        return !text.isEmpty() && text.length() <= MOST_DIGITS && text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    @Override
    public Written write(Integer value, Tape.Units units) {
        return new Written.Text(Integer.toString(value));
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.COUNT);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a whole number from " + least + " to " + most;
    }

    @Override
    public String example(Tape.Units units) {
        return Integer.toString(often);
    }
}
