package pitchboard.intake.form;

import java.util.Optional;
import java.util.function.Function;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/**
 * One line of the file: all that the reader, the writer and the page about the file need to know of it.
 *
 * @param name what stands before the colon
 * @param meaning what the line says, for the page
 * @param leftOut what happens when the line is not there, for the page
 * @param unsaid the value when the line is not there; empty when it must be
 */
public record Key<T>(
        String name, Form<T> form, String meaning, String leftOut, Function<Tape.Units, Optional<T>> unsaid) {
    /** A line nobody can leave out: above all, whatever is measured. */
    public static <T> Key<T> needed(String name, Form<T> form, String meaning) {
        return new Key<>(name, form, meaning, "must be there", units -> Optional.empty());
    }

    /** A line that has a value of its own when it is left out; never one that is measured. */
    public static <T> Key<T> defaulting(
            String name, Form<T> form, String meaning, String leftOut, Function<Tape.Units, T> value) {
        return new Key<>(name, form, meaning, leftOut, units -> Optional.of(value.apply(units)));
    }

    /** A line that stays open when it is left out, or belongs to some kinds only. */
    public static <T> Key<Optional<T>> open(String name, Form<T> form, String meaning, String leftOut) {
        return new Key<>(name, new Maybe<>(form), meaning, leftOut, units -> Optional.of(Optional.empty()));
    }

    public boolean isNeeded() {
        return unsaid.apply(Tape.Units.INCHES).isEmpty();
    }

    /**
     * What must be written in a group that leaves this line out, so that it means the same on a tape in other units;
     * empty when leaving it out goes on meaning the same.
     */
    Optional<Written> findKept(Conversion units) {
        Optional<Written> before = unsaid(units.from()).map(value -> form.converted(value, units));
        return before.equals(unsaid(units.to())) ? Optional.empty() : before;
    }

    private Optional<Written> unsaid(Tape.Units units) {
        // An open line has no value to write when it is left out.
        return unsaid.apply(units)
                .filter(value -> !value.equals(Optional.empty()))
                .map(value -> form.write(value, units));
    }

    T standIn() {
        return unsaid.apply(Tape.Units.INCHES).orElseGet(form::standIn);
    }

    /** The whole line as it might be written. */
    String example(Tape.Units units) {
        return name + ": " + form.example(units);
    }
}
