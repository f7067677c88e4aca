package pitchboard.sheet.table;

import pitchboard.sheet.type.Align;

/**
 * One column of a table.
 *
 * @param head over it; empty for none
 * @param width in millimetres; 0 shares what the others leave
 * @param kind what its cells hold
 */
public record Column(String head, double width, Align align, Kind kind) {
    /** What the cells of a column hold. */
    public enum Kind {
        TEXT,
        BOLD,
        /** Text that is only looked up, such as sources. */
        SMALL,
        /** An empty box to be ticked; the cell's text stands behind it. */
        CHECK_BOX
    }

    public static Column left(String head, double width) {
        return new Column(head, width, Align.LEFT, Kind.TEXT);
    }

    public static Column right(String head, double width) {
        return new Column(head, width, Align.RIGHT, Kind.TEXT);
    }

    public static Column centre(String head, double width) {
        return new Column(head, width, Align.CENTRE, Kind.TEXT);
    }

    /** A column that shares, with others of its kind, the width the rest leaves. */
    public static Column rest(String head) {
        return new Column(head, 0, Align.LEFT, Kind.TEXT);
    }

    public static Column checkBox(String head, double width) {
        return new Column(head, width, Align.LEFT, Kind.CHECK_BOX);
    }

    public Column bold() {
        return new Column(head, width, align, Kind.BOLD);
    }

    public Column small() {
        return new Column(head, width, align, Kind.SMALL);
    }
}
