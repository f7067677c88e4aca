package pitchboard.strength.elements.mesh;

import java.util.ArrayList;
import java.util.List;

/** How large a triangle may be at a place. */
final class SizeField {
    private static final int SAMPLES = 256;

    private final Fineness fineness;
    private final double[] cornerX;
    private final double[] cornerY;

    SizeField(Fineness fineness, List<Xy> corners) {
        this.fineness = fineness;
        this.cornerX = corners.stream().mapToDouble(Xy::x).toArray();
        this.cornerY = corners.stream().mapToDouble(Xy::y).toArray();
    }

    double at(double x, double y) {
        double nearest = Double.MAX_VALUE;
        for (int i = 0; i < cornerX.length; i++) {
            double dx = x - cornerX[i];
            double dy = y - cornerY[i];
            nearest = Math.min(nearest, dx * dx + dy * dy);
        }
        return fineness.at(Math.sqrt(nearest));
    }

    /** The first of two ends and the places between them, so close that the sides fit the field. */
    List<Xy> along(Xy from, Xy to) {
        double[] count = new double[SAMPLES + 1];
        double step = from.distanceTo(to) / SAMPLES;
        for (int i = 0; i < SAMPLES; i++) {
            Xy middle = from.toward(to, (i + 0.5) / SAMPLES);
            count[i + 1] = count[i] + step / at(middle.x(), middle.y());
        }
        int pieces = Math.max(1, (int) Math.ceil(count[SAMPLES] - 1e-9));
        List<Xy> places = new ArrayList<>();
        places.add(from);
        int sample = 0;
        for (int k = 1; k < pieces; k++) {
            double wanted = count[SAMPLES] * k / pieces;
            while (count[sample + 1] < wanted) {
                sample++;
            }
            double share = (wanted - count[sample]) / (count[sample + 1] - count[sample]);
            places.add(from.toward(to, (sample + share) / SAMPLES));
        }
        return places;
    }
}
