package pitchboard.intake;

import java.util.ArrayList;
import java.util.List;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Key;
import pitchboard.measure.Tape;

/**
 * What a page says about one line of the file.
 *
 * @param path the keys that lead to it, outermost first: {@code wanted > treads > width}
 * @param meaning what the line says
 * @param inInches what may be written, lengths in inches
 * @param inMillimetres the same, lengths in millimetres
 * @param leftOut what happens when the line is not there
 */
public record KeyLine(String path, String meaning, String inInches, String inMillimetres, String leftOut) {
    /** Every line inside a form, in the order they are written. */
    public static List<KeyLine> below(String path, Form<?> form) {
        List<KeyLine> lines = new ArrayList<>();
        for (Key<?> key : form.keys()) {
            KeyLine line = of(path, key);
            lines.add(line);
            lines.addAll(below(line.path(), key.form()));
        }
        return lines;
    }

    static KeyLine of(String path, Key<?> key) {
        return new KeyLine(
                path.isEmpty() ? key.name() : path + " > " + key.name(),
                key.meaning(),
                key.form().onPage(Tape.Units.INCHES),
                key.form().onPage(Tape.Units.MILLIMETRES),
                key.leftOut());
    }
}
