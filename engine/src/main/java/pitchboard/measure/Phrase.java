package pitchboard.measure;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Words with quantities in them, lettered for a tape only when somebody reads them. Advice that takes some reckoning
 * can also be thought out only then, see {@link #later}. Equal when it reads the same.
 */
public final class Phrase {
    private static final String PLACE = "{}";

    private final Supplier<Said> said;

    /** Each {@code {}} in the words stands for the next quantity. */
    private record Said(String words, List<Quantity> quantities) {}

    private Phrase(Supplier<Said> said) {
        this.said = said;
    }

    /**
     * Says it now.
     *
     * @param words plain words; each <code>{}</code> stands for the next quantity
     */
    public static Phrase of(String words, Quantity... quantities) {
        Said said = new Said(words, List.of(quantities));
        return new Phrase(() -> said);
    }

    /** Thinks it out when it is read; the supplier must always give the same. */
    public static Phrase later(Supplier<Phrase> phrase) {
        return new Phrase(() -> phrase.get().said.get());
    }

    /** This phrase and another, with words between. */
    public Phrase and(String between, Phrase other) {
        return new Phrase(() -> joined(said.get(), between, other.said.get()));
    }

    private static Said joined(Said one, String between, Said other) {
        Stream<Quantity> quantities = Stream.concat(one.quantities.stream(), other.quantities.stream());
        return new Said(one.words + between + other.words, quantities.toList());
    }

    public String write(Tape tape, Tape.Style style) {
        Said now = said.get();
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (Quantity quantity : now.quantities) {
            int place = now.words.indexOf(PLACE, from);
            text.append(now.words, from, place).append(TrueText.write(quantity, tape, style));
            from = place + PLACE.length();
        }
        return text.append(now.words, from, now.words.length()).toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Phrase that && said.get().equals(that.said.get());
    }

    @Override
    public int hashCode() {
        return said.get().hashCode();
    }

    /** For people who debug. */
    @Override
    public String toString() {
        return write(Tape.SIXTEENTHS, Tape.Style.PLAIN);
    }
}
