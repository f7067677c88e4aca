package pitchboard.sheet;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Quantity;

/** Something at a settled place on paper. Writers may draw it; they may not move or compute it. */
public sealed interface Mark {
    /** Which part put this mark here. */
    PartRef of();

    /** An open line through two or more spots. */
    record Line(PartRef of, List<Spot> spots, Pen pen) implements Mark {
        public Line {
            spots = List.copyOf(spots);
        }
    }

    /** A closed area: edged, filled or both. */
    record Shape(PartRef of, List<Spot> spots, Optional<Pen> pen, Optional<Fill> fill) implements Mark {
        public Shape {
            spots = List.copyOf(spots);
        }
    }

    /** Part of a circle, from one direction anticlockwise over a sweep; degrees, 0 is right, 90 is up the page. */
    record Arc(PartRef of, Spot centre, double radius, double from, double sweep, Pen pen) implements Mark {
        public Arc {
            radius = Spot.settled(radius);
            from = Spot.settled(from);
            sweep = Spot.settled(sweep);
        }
    }

    /** A full circle: edged, filled or both. */
    record Disc(PartRef of, Spot centre, double radius, Optional<Pen> pen, Optional<Fill> fill) implements Mark {
        public Disc {
            radius = Spot.settled(radius);
        }
    }

    /**
     * One line of text.
     *
     * @param at where its baseline begins
     * @param turn degrees anticlockwise from level
     * @param reads the same as plain characters, fractions with U+2044
     */
    record Text(PartRef of, Spot at, double turn, List<Run> runs, String reads) implements Mark {
        public Text {
            turn = Spot.settled(turn);
            runs = List.copyOf(runs);
        }
    }

    /**
     * A dimension: the strokes it is drawn with, its label, and what it says.
     *
     * @param from first of the two measured spots
     * @param to second of them; the corner's other leg for an angle
     * @param says the exact size, before it was put in words
     */
    record Dimension(PartRef of, Spot from, Spot to, Quantity says, List<Mark> strokes, Text label) implements Mark {
        public Dimension {
            strokes = List.copyOf(strokes);
        }
    }

    /** A named area that is not drawn: where a view or a table lies, for pages that react to a tap, and for tests. */
    record Zone(PartRef of, String name, Box box) implements Mark {
        /** The zone a frame leaves on every sheet: no text may leave it. */
        public static final String BORDER = "border";
    }
}
