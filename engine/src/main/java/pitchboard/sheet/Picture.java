package pitchboard.sheet;

import java.util.List;

/**
 * One drawing on a page of its own size, made for a screen: its marks stand in groups that a page can react to.
 *
 * @param id short, fit for the name of an element
 * @param title in words
 * @param page where everything lies, from the origin
 * @param groups in the order they are drawn: later ones lie on top
 */
public record Picture(String id, String title, Box page, List<Group> groups) {
    public Picture {
        groups = List.copyOf(groups);
    }

    /** All marks, without their groups. */
    public List<Mark> marks() {
        return groups.stream().flatMap(group -> group.marks().stream()).toList();
    }

    /**
     * Marks that belong together.
     *
     * @param name of what they show: the mark of a part, the field that decides a size, the number of a running mark
     */
    public record Group(Kind kind, String name, List<Mark> marks) {
        public Group {
            marks = List.copyOf(marks);
        }
    }

    /** What a group of marks shows. */
    public enum Kind {
        /** Nothing of its own: notes and signs. */
        PLAIN,
        /** A part of the stair or of what is around it. */
        PART,
        /** A size. Its name is the line of the job file that decides it, or empty when no single line does. */
        SIZE,
        /** A running mark on a board. */
        MARK
    }
}
