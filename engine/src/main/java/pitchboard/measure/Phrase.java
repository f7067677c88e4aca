package pitchboard.measure;

import java.util.List;
import java.util.stream.Stream;

/**
 * Words with quantities in them, lettered for a tape only when somebody reads them.
 *
 * @param words plain words; each <code>{}</code> stands for the next quantity
 * @param quantities as many as there are places for them
 */
public record Phrase(String words, List<Quantity> quantities) {
    private static final String PLACE = "{}";

    public Phrase {
        quantities = List.copyOf(quantities);
    }

    public static Phrase of(String words, Quantity... quantities) {
        return new Phrase(words, List.of(quantities));
    }

    public static Phrase of(String words) {
        return new Phrase(words, List.of());
    }

    /** This phrase and another, with words between. */
    public Phrase and(String between, Phrase other) {
        return new Phrase(
                words + between + other.words,
                Stream.concat(quantities.stream(), other.quantities.stream()).toList());
    }

    public String write(Tape tape, Tape.Style style) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (Quantity quantity : quantities) {
            int place = words.indexOf(PLACE, from);
            text.append(words, from, place).append(TrueText.write(quantity, tape, style));
            from = place + PLACE.length();
        }
        return text.append(words, from, words.length()).toString();
    }
}
