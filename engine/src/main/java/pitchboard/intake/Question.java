package pitchboard.intake;

import java.util.List;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Shape;

/**
 * One line of the file as something to ask for.
 *
 * @param name what stands before the colon
 * @param line what a page says about it
 * @param needed whether the line must be there when its group is
 * @param lines what to ask for inside: the lines of a group, or of each item of a list
 */
public record Question(String name, KeyLine line, boolean needed, Shape shape, List<Question> lines) {
    public Question {
        lines = List.copyOf(lines);
    }

    static List<Question> below(String path, Form<?> form) {
        return form.keys().stream().map(key -> of(path, key)).toList();
    }

    private static Question of(String path, Key<?> key) {
        KeyLine line = KeyLine.of(path, key);
        return new Question(key.name(), line, key.isNeeded(), key.form().shape(), below(line.path(), key.form()));
    }
}
