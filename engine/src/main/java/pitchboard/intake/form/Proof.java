package pitchboard.intake.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeReader;
import pitchboard.measure.TapeReading;

/** One reading of a text: where in it we are, what a bare number counts, and the problems found so far. */
public final class Proof {
    private final List<Problem> problems;
    private final String field;
    private final Spot place;
    private final Optional<Tape.Units> units;
    /** What else may stand here than the form knows that reads it, as the beginning of a phrase. */
    private final String orElse;

    private Proof(List<Problem> problems, String field, Spot place, Optional<Tape.Units> units, String orElse) {
        this.problems = problems;
        this.field = field;
        this.place = place;
        this.units = units;
        this.orElse = orElse;
    }

    /** A new reading; until {@link #in} says what a bare number counts, only lengths with a unit are lengths. */
    public static Proof begin() {
        return new Proof(new ArrayList<>(), "", Spot.START, Optional.empty(), "");
    }

    /** A reading whose problems nobody looks at. */
    static Proof unread() {
        return begin().in(Tape.Units.INCHES);
    }

    /** The value of a whole text; one that stands in when the text cannot be read at all. */
    public <T> T whole(Form<T> form, Written written) {
        return form.read(written, this).orElseGet(form::standIn);
    }

    Proof in(Tape.Units bareNumbers) {
        return new Proof(problems, field, place, Optional.of(bareNumbers), orElse);
    }

    /** The same reading, one name deeper. */
    Proof under(String name, Spot namePlace) {
        return new Proof(problems, field.isEmpty() ? name : field + " > " + name, namePlace, units, "");
    }

    /** The same reading, where this word may also stand. */
    Proof or(String word) {
        return new Proof(problems, field, place, units, orElse + word + ", or ");
    }

    /** What may stand here, as a phrase. */
    String phrase(Form<?> form) {
        return orElse + form.wanted(units());
    }

    /** Where the name of the group stands that is being read. */
    Spot place() {
        return place;
    }

    /** What messages show lengths in. */
    Tape.Units units() {
        return units.orElse(Tape.Units.INCHES);
    }

    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    int count() {
        return problems.size();
    }

    void note(Spot at, String read, String expected) {
        problems.add(new Problem(at, field, read, expected));
    }

    /** Notes that something else was expected here; for forms that are made elsewhere. */
    public void refuse(Written written, String expected) {
        note(written, expected);
    }

    void note(Written written, String expected) {
        note(written.at(), shown(written), expected);
    }

    private static String shown(Written written) {
        return written.match(Written.Text::value, group -> "a group of lines", sequence -> "a list");
    }

    /** The text itself; empty, with a problem noted, when it is a group or a list. */
    Optional<Written.Text> findText(Written written, String expected) {
        if (written instanceof Written.Text text) {
            return Optional.of(text);
        }
        note(written, expected);
        return Optional.empty();
    }

    /** The length a text stands for. Empty and silent when only the unit of bare numbers, noted before, is missing. */
    Optional<Length> findLength(Written.Text text, boolean signed) {
        TapeReading reading = reading(text, units(), signed);
        if (reading instanceof TapeReading.Unread unread) {
            String place = unread.found().equals(text.value()) ? "" : " where " + shownPart(unread) + " stands";
            note(text.at().right(unread.column() - 1), text.value(), unread.expected() + place);
            return Optional.empty();
        }
        return reading.findLength().filter(length -> units.isPresent() || isSameInMm(text, length, signed));
    }

    private static TapeReading reading(Written.Text text, Tape.Units bare, boolean signed) {
        return signed ? TapeReader.readSigned(text.value(), bare) : TapeReader.read(text.value(), bare);
    }

    private static boolean isSameInMm(Written.Text text, Length length, boolean signed) {
        return reading(text, Tape.Units.MILLIMETRES, signed).findLength().equals(Optional.of(length));
    }

    private static String shownPart(TapeReading.Unread unread) {
        return unread.found().isEmpty() ? "the end" : Problem.quoted(unread.found());
    }
}
