package pitchboard.intake;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.form.Proof;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** What came of reading a job: the whole of it, or everything that is wrong with it. */
public sealed interface JobText {
    record Understood(Notes notes) implements JobText {}

    /**
     * Nothing of it can be used.
     *
     * @param problems at least one, in the order of the text
     */
    record NotUnderstood(List<Problem> problems) implements JobText {
        public NotUnderstood {
            problems =
                    problems.stream().sorted((a, b) -> a.at().compareTo(b.at())).toList();
        }
    }

    /**
     * Reads a job from a text's shape.
     *
     * @param rulebooks the names a rulebook can have; empty when they are not known here
     */
    static JobText of(Transcript transcript, List<String> rulebooks) {
        return transcript.match(
                legible -> of(legible.written(), rulebooks), illegible -> new NotUnderstood(illegible.problems()));
    }

    /** Reads a job from JSON text of the same shape as the job file. */
    static JobText ofJson(String json, List<String> rulebooks) {
        return of(JsonReader.read(json), rulebooks);
    }

    private static JobText of(Written written, List<String> rulebooks) {
        Proof proof = Proof.begin();
        Notes notes = proof.whole(new JobForm(rulebooks), written);
        return proof.problems().isEmpty() ? new Understood(notes) : new NotUnderstood(proof.problems());
    }

    /**
     * The job as it would be written, each length in the units of the job's tape.
     *
     * @throws IllegalArgumentException when a length is one that no tape text says exactly
     */
    static Written.Group write(Notes notes) {
        Written written =
                new JobForm(List.of()).write(notes, notes.brief().tape().units());
        return (Written.Group) written;
    }

    /**
     * One text for one meaning, whatever the spelling, order and comments of the files were: what a fingerprint is of.
     *
     * @throws IllegalArgumentException when a length is one that no tape text says exactly
     */
    static String canonical(Notes notes, Optional<LocalChanges> changes) {
        Tape.Units units = notes.brief().tape().units();
        String local = changes.map(known -> JsonWriter.write(ChangesText.write(known, units)))
                .orElse("");
        // Where the changes are kept is no part of what they say.
        Notes anywhere =
                new Notes(notes.site(), notes.brief(), notes.rulebook(), Optional.empty(), notes.localLimits());
        return JsonWriter.write(write(anywhere)) + local;
    }

    /** Every line a job file can have, in the order they are written. */
    static List<KeyLine> keys(List<String> rulebooks) {
        return KeyLine.below("", new JobForm(rulebooks));
    }

    /** The same lines as something to ask for, each with those inside it. */
    static List<Question> questions(List<String> rulebooks) {
        return Question.below("", new JobForm(rulebooks));
    }

    /** What bare numbers count in a job, be it complete or not; empty when it does not say so. */
    static Optional<Tape.Units> findUnits(Written.Group job) {
        return JobForm.findUnits(job);
    }

    /**
     * A job, be it complete or not, for a tape in other units: every length exactly the same, and the same paper. It is
     * marked to a graduation of the new units.
     *
     * @param from what bare numbers count in it
     */
    static Written.Group inUnits(Written.Group job, Tape.Units from, Tape.Units to) {
        return JobForm.inUnits(job, from, to);
    }

    default <T> T match(
            Function<? super Understood, ? extends T> understood,
            Function<? super NotUnderstood, ? extends T> notUnderstood) {
        return this instanceof Understood good ? understood.apply(good) : notUnderstood.apply((NotUnderstood) this);
    }
}
