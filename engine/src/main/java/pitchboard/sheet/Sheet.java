package pitchboard.sheet;

import java.util.List;
import pitchboard.brief.Paper;

/**
 * One finished page.
 *
 * @param id short, fit for a file name
 * @param title in words
 * @param marks in the order they are drawn: later ones lie on top
 */
public record Sheet(String id, String title, Paper paper, List<Mark> marks) {
    public Sheet {
        marks = List.copyOf(marks);
    }

    /** The whole page. */
    public Box page() {
        return new Box(0, 0, paper.widthMm(), paper.heightMm());
    }
}
