package pitchboard.sheet.lessons;

import java.util.Optional;
import pitchboard.sheet.Box;
import pitchboard.sheet.Picture;
import pitchboard.sheet.pictures.Canvas;

/**
 * A picture that explains one line of the job file, or one of its choices.
 *
 * @param field the path of the line, items of lists without their number
 * @param choice the word as the job file has it; empty when the line itself is explained
 */
public record Lesson(String field, Optional<String> choice, Picture picture) {
    static final Box PAGE = new Box(0, 0, 30, 24);

    static Lesson of(String field, Canvas drawn) {
        return new Lesson(field, Optional.empty(), drawn.picture());
    }

    static Lesson of(String field, String choice, Canvas drawn) {
        return new Lesson(field, Optional.of(choice), drawn.picture());
    }

    static Canvas canvas(String title) {
        return new Canvas("lesson", title, PAGE);
    }
}
