package pitchboard.app;

import java.nio.file.Path;
import pitchboard.intake.written.Problem;

/**
 * One thing in a file that could not be understood, ready to be shown beside the file's name.
 *
 * @param line counted from 1; 0 when it is about the whole file
 * @param column counted from 1; 0 when it is about the whole file
 * @param words what was read and what would be right
 */
public record Trouble(Path file, int line, int column, String words) {
    static Trouble of(Path file, Problem problem) {
        String sentence = problem.sentence();
        String place = "line " + problem.line() + ", column " + problem.column() + ": ";
        String words = sentence.startsWith(place) ? sentence.substring(place.length()) : sentence;
        return new Trouble(file, problem.line(), problem.column(), words);
    }

    /** Such as {@code loft.yaml:14:12: wanted > width: found "40 ft", expected ...}. */
    public String sentence() {
        return file + (line == 0 ? "" : ":" + line + ":" + column) + ": " + words;
    }
}
