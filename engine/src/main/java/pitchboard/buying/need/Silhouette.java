package pitchboard.buying.need;

import java.util.ArrayList;
import java.util.List;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;

/** An outline in tenths of a millimetre, as its two sides: how far right and how far left it reaches at a height. */
final class Silhouette {
    private final long[] x;
    private final long[] y;

    private Silhouette(long[] x, long[] y) {
        this.x = x;
        this.y = y;
    }

    static Silhouette of(Outline outline) {
        List<Point> corners = outline.corners();
        long[] x = new long[corners.size()];
        long[] y = new long[x.length];
        for (int at = 0; at < x.length; at++) {
            x[at] = Nesting.tenths(corners.get(at).x());
            y[at] = Nesting.tenths(corners.get(at).y());
        }
        return new Silhouette(x, y);
    }

    /**
     * How far the other must move to the right so that nothing of it comes nearer to this than the gap, or lies left of
     * it. Generous by a little: about every point a square is kept clear, not a circle.
     */
    long clearOf(Silhouette other, long gap) {
        List<Long> heights = new ArrayList<>();
        for (long each : y) {
            heights.add(each);
        }
        for (long each : other.y) {
            heights.add(each - gap);
            heights.add(each);
            heights.add(each + gap);
        }
        long clear = Long.MIN_VALUE;
        for (long height : heights) {
            long right = right(height);
            long left = other.leftWithin(height - gap, height + gap);
            if (right > Long.MIN_VALUE && left < Long.MAX_VALUE) {
                clear = Math.max(clear, right - left);
            }
        }
        return clear + gap;
    }

    /** Rounded up; the least number there is where nothing of the outline is that high. */
    private long right(long height) {
        long right = Long.MIN_VALUE;
        for (int at = 0; at < x.length; at++) {
            int next = (at + 1) % x.length;
            if (reaches(at, next, height)) {
                right = Math.max(right, -at(-x[at], -x[next], y[at], y[next], height));
            }
        }
        return right;
    }

    /** Rounded down; the greatest number there is where nothing of the outline is within these heights. */
    private long leftWithin(long low, long high) {
        long left = Math.min(left(low), left(high));
        for (int at = 0; at < x.length; at++) {
            if (y[at] >= low && y[at] <= high) {
                left = Math.min(left, x[at]);
            }
        }
        return left;
    }

    private long left(long height) {
        long left = Long.MAX_VALUE;
        for (int at = 0; at < x.length; at++) {
            int next = (at + 1) % x.length;
            if (reaches(at, next, height)) {
                left = Math.min(left, at(x[at], x[next], y[at], y[next], height));
            }
        }
        return left;
    }

    private boolean reaches(int at, int next, long height) {
        return height >= Math.min(y[at], y[next]) && height <= Math.max(y[at], y[next]);
    }

    /** Where the side from one corner to the next is at this height, rounded down; the lesser end of a level side. */
    private static long at(long x1, long x2, long y1, long y2, long height) {
        if (y1 == y2) {
            return Math.min(x1, x2);
        }
        long run = y2 > y1 ? x2 - x1 : x1 - x2;
        return x1 + Math.floorDiv(run * (height - y1), Math.abs(y2 - y1));
    }
}
