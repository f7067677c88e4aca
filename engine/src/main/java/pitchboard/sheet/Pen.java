package pitchboard.sheet;

import java.util.Arrays;
import java.util.List;

/** Pens mean something; each can be told from the others in black and white. Widths and dashes in millimetres. */
public enum Pen {
    /** Edges that are cut through in a section. */
    CUT(0.7),
    /** Visible edges. */
    OUTLINE(0.5),
    /** Edges behind something. */
    HIDDEN(0.3, 2.4, 1.2),
    /** Centre lines and lines of symmetry. */
    CENTRE(0.2, 8, 1.5, 1.2, 1.5),
    /** Where something else stands or will stand: other members, walls, the finish still to come. */
    GHOST(0.25, 6, 1.2, 1.2, 1.2, 1.2, 1.2),
    /** Lines a pencil draws on the wood. */
    PENCIL(0.35),
    /** Hatching, grain, leaders. */
    THIN(0.18),
    /** Dimension and extension lines. */
    DIMENSION(0.18),
    /** The short strokes that end a dimension. */
    TICK(0.5),
    /** Where a drawing is broken off. */
    BREAK(0.25),
    /** Rules of a table. */
    RULE(0.2),
    /** The rule under a table's head. */
    HEAD_RULE(0.45),
    /** The border of a sheet. */
    FRAME(0.35);

    private final double widthMm;
    private final List<Double> dashes;

    Pen(double widthMm, double... dashes) {
        this.widthMm = widthMm;
        this.dashes = Arrays.stream(dashes).boxed().toList();
    }

    public double widthMm() {
        return widthMm;
    }

    /** Lengths of dash, gap, dash, gap ...; empty when the line is unbroken. */
    public List<Double> dashes() {
        return dashes;
    }
}
