package pitchboard.intake.form;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/** One kind of value, both ways: from what was written to what it means, and back. */
public interface Form<T> {
    /** The value; empty when it cannot be read, and then the proof has a problem more. */
    Optional<T> read(Written written, Proof proof);

    /** Text that {@link #read} turns into the same value again. */
    Written write(T value, Tape.Units units);

    /** What may be written, as a phrase: {@code a length from 12" to 12'-0"}. */
    String wanted(Tape.Units units);

    /** The same for a page that explains the lines inside a group one by one, below the line of the group. */
    default String onPage(Tape.Units units) {
        return wanted(units);
    }

    /** Something that can be read. */
    String example(Tape.Units units);

    /** What a page must know to ask for the value. */
    Shape shape();

    /**
     * What was written, for a tape in other units: every length the same. What is no value of this form stays as it is,
     * so that a job that is not complete can be converted, too.
     */
    default Written converted(Written written, Conversion units) {
        return written;
    }

    /** The lines inside, when the value is a group of lines. */
    default List<Key<?>> keys() {
        return List.of();
    }

    /** Takes the place of a value that could not be read, so that the rest can. */
    default T standIn() {
        return read(new Written.Text(example(Tape.Units.INCHES)), Proof.unread())
                .orElseThrow(() -> new IllegalStateException(
                        "the example " + example(Tape.Units.INCHES) + " is not " + wanted(Tape.Units.INCHES)));
    }
}
