package pitchboard.bench;

import java.util.List;
import java.util.Locale;

/** What a row of measurements comes to: milliseconds, or a plain ratio. */
record Spread(int count, double median, double high) {
    static Spread of(List<Double> millis) {
        List<Double> sorted = millis.stream().sorted().toList();
        return new Spread(sorted.size(), at(sorted, 0.5), at(sorted, 0.99));
    }

    private static double at(List<Double> sorted, double part) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(part * (sorted.size() - 1))));
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "median %.1f ms, 99th of 100 %.1f ms (%d times)", median, high, count);
    }

    /** Of ratios, without a unit. */
    String plain() {
        return String.format(Locale.ROOT, "median %.1f, 99th of 100 %.1f (%d times)", median, high, count);
    }
}
