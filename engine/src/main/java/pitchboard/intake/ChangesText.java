package pitchboard.intake;

import java.util.List;
import java.util.function.Function;
import pitchboard.intake.form.Proof;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** What came of reading a file of local changes: all of them, or everything that is wrong with it. */
public sealed interface ChangesText {
    record Understood(LocalChanges changes) implements ChangesText {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(List<Problem> problems) implements ChangesText {
        public NotUnderstood {
            problems =
                    problems.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
        }
    }

    /**
     * Reads local changes from a text's shape.
     *
     * @param rulebooks the names a rulebook can have; empty when they are not known here
     */
    static ChangesText of(Transcript transcript, List<String> rulebooks) {
        return transcript.match(
                legible -> of(legible.written(), rulebooks), illegible -> new NotUnderstood(illegible.problems()));
    }

    private static ChangesText of(Written written, List<String> rulebooks) {
        Proof proof = Proof.begin();
        LocalChanges changes = proof.whole(new ChangesForm(rulebooks), written);
        return proof.problems().isEmpty() ? new Understood(changes) : new NotUnderstood(proof.problems());
    }

    /** The changes as they would be written, each length in these units. */
    static Written write(LocalChanges changes, Tape.Units units) {
        return new ChangesForm(List.of()).write(changes, units);
    }

    /** Every line such a file can have, in the order they are written. */
    static List<KeyLine> keys(List<String> rulebooks) {
        return KeyLine.below("", new ChangesForm(rulebooks));
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
