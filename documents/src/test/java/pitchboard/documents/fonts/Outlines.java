package pitchboard.documents.fonts;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.util.Arrays;

/** Outlines of letters as words, so that two can be held against each other. */
public final class Outlines {
    private Outlines() {}

    public static String words(GeneralPath path) {
        StringBuilder words = new StringBuilder();
        float[] places = new float[6];
        for (PathIterator each = path.getPathIterator(null); !each.isDone(); each.next()) {
            Arrays.fill(places, 0);
            words.append(each.currentSegment(places)).append(Arrays.toString(places));
        }
        return words.toString();
    }
}
