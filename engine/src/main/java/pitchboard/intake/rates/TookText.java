package pitchboard.intake.rates;

import java.util.List;
import java.util.function.Function;
import pitchboard.afterwards.Took;
import pitchboard.intake.KeyLine;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Proof;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;

/** What came of reading a file of what a job took: all of it, or everything that is wrong with it. */
public sealed interface TookText {
    record Understood(Took took) implements TookText {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(List<Problem> problems) implements TookText {
        public NotUnderstood {
            problems =
                    problems.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
        }
    }

    /** Reads it from a text's shape. */
    static TookText of(Transcript transcript) {
        return transcript.match(legible -> of(legible.written()), illegible -> new NotUnderstood(illegible.problems()));
    }

    private static TookText of(Written written) {
        Proof proof = Proof.begin();
        Took took = proof.whole(new TookForm(currency(written)), written);
        return proof.problems().isEmpty() ? new Understood(took) : new NotUnderstood(proof.problems());
    }

    /** The currency of the file; any that will do while it cannot be read, which is noted later. */
    private static Currency currency(Written written) {
        Form<Currency> form = TookForm.CURRENCY.form();
        return written.match(
                text -> form.standIn(),
                group -> group.findEntry(TookForm.CURRENCY.name())
                        .flatMap(entry -> form.read(entry.value(), Proof.begin()))
                        .orElseGet(form::standIn),
                sequence -> form.standIn());
    }

    /** The same as it would be written. */
    static Written write(Took took) {
        return new TookForm(took.currency()).write(took, Tape.Units.INCHES);
    }

    /** Every line such a file can have, in the order they are written. */
    static List<KeyLine> keys() {
        return KeyLine.below("", new TookForm(TookForm.CURRENCY.form().standIn()));
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
