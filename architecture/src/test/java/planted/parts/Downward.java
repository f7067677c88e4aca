package planted.parts;

import java.util.List;
import planted.plane.Upward;

/** May use the plane, which makes a circle because the plane uses this. */
public record Downward(List<Upward> outlines) {
    public Downward {
        outlines = List.copyOf(outlines);
    }
    /** Generics leave no trace of a use that runs; this does. */
    public Downward first() {
        return outlines.get(0).part();
    }
}
