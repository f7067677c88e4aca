package pitchboard.intake.rates;

import java.util.List;
import java.util.function.Function;
import pitchboard.costing.Rates;
import pitchboard.intake.KeyLine;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Proof;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;

/** What came of reading a file of rates: all of them, or everything that is wrong with it. */
public sealed interface RatesText {
    record Understood(Rates rates) implements RatesText {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(List<Problem> problems) implements RatesText {
        public NotUnderstood {
            problems =
                    problems.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
        }
    }

    /** Reads rates from a text's shape. */
    static RatesText of(Transcript transcript) {
        return transcript.match(legible -> of(legible.written()), illegible -> new NotUnderstood(illegible.problems()));
    }

    private static RatesText of(Written written) {
        Proof proof = Proof.begin();
        Rates rates = proof.whole(new RatesForm(currency(written)), written);
        return proof.problems().isEmpty() ? new Understood(rates) : new NotUnderstood(proof.problems());
    }

    /** The currency of the file; any that will do while it cannot be read, which is noted later. */
    private static Currency currency(Written written) {
        Form<Currency> form = RatesForm.CURRENCY.form();
        return written.match(
                text -> form.standIn(),
                group -> group.findEntry(RatesForm.CURRENCY.name())
                        .flatMap(entry -> form.read(entry.value(), Proof.begin()))
                        .orElseGet(form::standIn),
                sequence -> form.standIn());
    }

    /** The rates as they would be written, lengths in inches. */
    static Written write(Rates rates) {
        return new RatesForm(rates.currency()).write(rates, Tape.Units.INCHES);
    }

    /** Every line such a file can have, in the order they are written. */
    static List<KeyLine> keys() {
        return KeyLine.below("", new RatesForm(RatesForm.CURRENCY.form().standIn()));
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
