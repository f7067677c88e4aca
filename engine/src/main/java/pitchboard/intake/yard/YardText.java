package pitchboard.intake.yard;

import java.util.List;
import java.util.function.Function;
import pitchboard.buying.yard.Yard;
import pitchboard.intake.KeyLine;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Proof;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.money.Currency;

/** What came of reading a price list: all of it, or everything that is wrong with it. */
public sealed interface YardText {
    record Understood(Yard yard) implements YardText {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(List<Problem> problems) implements YardText {
        public NotUnderstood {
            problems =
                    problems.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
        }
    }

    /** Reads a price list from a text's shape. */
    static YardText of(Transcript transcript) {
        return transcript.match(legible -> of(legible.written()), illegible -> new NotUnderstood(illegible.problems()));
    }

    private static YardText of(Written written) {
        Proof proof = Proof.begin();
        Yard yard = proof.whole(new YardForm(currency(written)), written);
        return proof.problems().isEmpty() ? new Understood(yard) : new NotUnderstood(proof.problems());
    }

    /** The currency of the list; any that will do while it cannot be read, which is noted later. */
    private static Currency currency(Written written) {
        Form<Currency> form = YardForm.CURRENCY.form();
        return written.match(
                text -> form.standIn(),
                group -> group.findEntry(YardForm.CURRENCY.name())
                        .flatMap(entry -> form.read(entry.value(), Proof.begin()))
                        .orElseGet(form::standIn),
                sequence -> form.standIn());
    }

    /** The price list as it would be written, each length in its own units. */
    static Written write(Yard yard) {
        return new YardForm(yard.currency()).write(yard, yard.units());
    }

    /** Every line such a file can have, in the order they are written. */
    static List<KeyLine> keys() {
        return KeyLine.below("", new YardForm(YardForm.CURRENCY.form().standIn()));
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
