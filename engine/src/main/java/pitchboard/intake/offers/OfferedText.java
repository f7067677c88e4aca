package pitchboard.intake.offers;

import java.util.List;
import java.util.function.Function;
import pitchboard.intake.KeyLine;
import pitchboard.intake.form.Proof;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** What came of reading a file of options: all of them, or everything that is wrong with it. */
public sealed interface OfferedText {
    record Understood(Offered offered) implements OfferedText {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(List<Problem> problems) implements OfferedText {
        public NotUnderstood {
            problems =
                    problems.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
        }
    }

    /** Reads options from a text's shape; what they change in a job is not looked at. */
    static OfferedText of(Transcript transcript) {
        return transcript.match(legible -> of(legible.written()), illegible -> new NotUnderstood(illegible.problems()));
    }

    private static OfferedText of(Written written) {
        Proof proof = Proof.begin();
        Offered offered = proof.whole(new OfferedForm(), written);
        return proof.problems().isEmpty() ? new Understood(offered) : new NotUnderstood(proof.problems());
    }

    /** The options as they would be written. */
    static Written write(Offered offered) {
        return new OfferedForm().write(offered, Tape.Units.INCHES);
    }

    /** Every line such a file can have, in the order they are written. */
    static List<KeyLine> keys() {
        return KeyLine.below("", new OfferedForm());
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
