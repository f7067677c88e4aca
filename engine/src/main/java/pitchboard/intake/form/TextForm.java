package pitchboard.intake.form;

import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** Free words. Blanks and line breaks between them count as one blank. */
record TextForm(int longest, String often) implements Form<String> {
    @Override
    public Optional<String> read(Written written, Proof proof) {
        String wanted = proof.phrase(this);
        Optional<String> words = proof.findText(written, wanted)
                .map(text -> oneLine(text.value()))
                .filter(line -> line.length() <= longest && line.chars().noneMatch(Character::isISOControl));
        if (words.isEmpty() && written instanceof Written.Text) {
            proof.note(written, wanted);
        }
        return words;
    }

    private static String oneLine(String text) {
        return text.replaceAll("[ \t\r\n]+", " ").strip();
    }

    @Override
    public Written write(String value, Tape.Units units) {
        return new Written.Text(value);
    }

    @Override
    public Shape shape() {
        return Shape.of(Shape.Kind.WORDS);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "words, at most " + longest + " characters";
    }

    @Override
    public String example(Tape.Units units) {
        return often;
    }
}
