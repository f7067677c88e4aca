package pitchboard.intake.form;

import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeReader;

/**
 * Between which lengths a line must stay, and a length that often stands there.
 *
 * @param least smallest that is taken, itself included
 * @param most largest that is taken, itself included
 * @param inches an example on a tape in inches
 * @param millimetres an example on a tape in millimetres
 */
public record Range(Length least, Length most, String inches, String millimetres) {
    static Range of(String least, String most, String inches, String millimetres) {
        return new Range(length(least), length(most), inches, millimetres);
    }

    private static Length length(String text) {
        return TapeReader.readSigned(text, Tape.Units.INCHES).findLength().orElseThrow();
    }

    public boolean holds(Length length) {
        return length.isAtLeast(least) && length.isAtMost(most);
    }

    /** Whether a sign may stand before the length. */
    boolean isSigned() {
        return least.isNegative();
    }

    String example(Tape.Units units) {
        return units == Tape.Units.INCHES ? inches : millimetres;
    }

    /** The range as a phrase: {@code a length from 12" to 12'-0"}. */
    public String words(Tape.Units units) {
        return "a length from " + shown(least, units) + " to " + shown(most, units);
    }

    private static String shown(Length length, Tape.Units units) {
        return LengthText.rounded(length, units);
    }
}
