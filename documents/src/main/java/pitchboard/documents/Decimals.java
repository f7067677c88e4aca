package pitchboard.documents;

/** Numbers as drawings write them: at most four decimals, a full stop, no exponent, no minus zero, no language. */
public final class Decimals {
    private static final long PER_UNIT = 10_000;

    private Decimals() {}

    public static StringBuilder write(StringBuilder to, double value) {
        long parts = (long) Math.rint(value * PER_UNIT);
        if (parts < 0) {
            to.append('-');
            parts = -parts;
        }
        to.append(parts / PER_UNIT);
        long rest = parts % PER_UNIT;
        if (rest > 0) {
            to.append('.');
            for (long unit = PER_UNIT / 10; rest > 0; unit /= 10) {
                to.append((char) ('0' + rest / unit));
                rest %= unit;
            }
        }
        return to;
    }

    public static String of(double value) {
        return write(new StringBuilder(), value).toString();
    }
}
