package pitchboard.strength.elements.mesh;

import java.util.Arrays;

/**
 * Triangles over a growing set of points, none of which lies inside the circle through the corners of a triangle.
 *
 * <p>A. Bowyer and D. F. Watson, Computer Journal 24 (1981) 162 and 167 (from memory): a new point clears away the
 * triangles whose circle holds it and joins the hole's rim. Sides that are {@link #fix fixed} are never cleared. The
 * first three points are the corners of a triangle far around all others.
 *
 * <p>Triangle {@code t} has the corners {@code corner[3t]} to {@code corner[3t + 2]}, counterclockwise; its side {@code k}
 * runs from corner {@code k} to the next one, and {@code beyond[3t + k]} is the triangle on its other side, or -1.
 */
final class Delaunay {
    static final int OUTER_POINTS = 3;
    static final int NOWHERE = -1;

    double[] x = new double[64];
    double[] y = new double[64];
    int points;
    int[] corner = new int[3 * 64];
    int[] beyond = new int[3 * 64];
    boolean[] fixed = new boolean[3 * 64];
    int triangles;

    private final Hole hole = new Hole(this);
    private int last;

    /** A single triangle far around a box. */
    Delaunay(double leastX, double leastY, double mostX, double mostY) {
        double size = 40 * (Math.max(mostX - leastX, mostY - leastY) + 1);
        double middleX = (leastX + mostX) / 2;
        double middleY = (leastY + mostY) / 2;
        addPoint(middleX - size, middleY - size);
        addPoint(middleX + size, middleY - size);
        addPoint(middleX, middleY + size);
        setTriangle(addTriangle(), 0, 1, 2);
        Arrays.fill(beyond, 0, 3, NOWHERE);
    }

    private int addPoint(double px, double py) {
        if (points == x.length) {
            x = Arrays.copyOf(x, 2 * points);
            y = Arrays.copyOf(y, 2 * points);
        }
        x[points] = px;
        y[points] = py;
        return points++;
    }

    private int addTriangle() {
        if (3 * triangles == corner.length) {
            corner = Arrays.copyOf(corner, 6 * triangles);
            beyond = Arrays.copyOf(beyond, 6 * triangles);
            fixed = Arrays.copyOf(fixed, 6 * triangles);
        }
        return triangles++;
    }

    private void setTriangle(int triangle, int a, int b, int c) {
        corner[3 * triangle] = a;
        corner[3 * triangle + 1] = b;
        corner[3 * triangle + 2] = c;
    }

    /** Adds a point that is not yet there, inside the outermost triangle; says its number. */
    int insert(double px, double py) {
        int point = addPoint(px, py);
        fillHoleAround(point, locate(px, py, last, false));
        return point;
    }

    /**
     * Adds a point unless a fixed side stands between it and the triangle it is wanted for, or it would come so close to a
     * fixed side that it sees it at more than a right angle.
     *
     * @return the number of the point, or {@link #NOWHERE}
     */
    int insertInside(double px, double py, int wantedFor) {
        int triangle = locate(px, py, wantedFor, true);
        if (triangle == NOWHERE) {
            return NOWHERE;
        }
        int point = addPoint(px, py);
        hole.dig(point, triangle);
        if (hole.anySide(side -> fixed[side] && isSeenWide(point, side))) {
            points--;
            return NOWHERE;
        }
        fill(point);
        return point;
    }

    private boolean isSeenWide(int point, int side) {
        int a = corner[side];
        int b = corner[next(side)];
        return (x[a] - x[point]) * (x[b] - x[point]) + (y[a] - y[point]) * (y[b] - y[point]) < 0;
    }

    /** The triangle that holds a place, going straight there; with {@code stopped}, not across fixed sides. */
    private int locate(double px, double py, int from, boolean stopped) {
        int triangle = from;
        for (int k = 0; k < 3; ) {
            int side = 3 * triangle + k;
            int a = corner[side];
            int b = corner[next(side)];
            if (Predicates.turn(x[a], y[a], x[b], y[b], px, py) >= 0) {
                k++;
            } else if (stopped && fixed[side]) {
                return NOWHERE;
            } else {
                triangle = beyond[side];
                k = 0;
            }
        }
        return triangle;
    }

    private void fillHoleAround(int point, int triangle) {
        hole.dig(point, triangle);
        fill(point);
    }

    /** Joins the rim of the hole to the point; uses the room of the triangles that were cleared. */
    private void fill(int point) {
        int[] startsAt = hole.rimStarts;
        for (int i = 0; i < hole.rim; i++) {
            int triangle = i < hole.cleared ? hole.triangle[i] : addTriangle();
            int a = hole.rimFrom[i];
            setTriangle(triangle, a, hole.rimTo[i], point);
            int side = 3 * triangle;
            beyond[side] = hole.rimBeyond[i];
            fixed[side] = hole.rimFixed[i];
            fixed[side + 1] = false;
            fixed[side + 2] = false;
            if (hole.rimBeyond[i] != NOWHERE) {
                beyond[sideBack(hole.rimBeyond[i], hole.rimTo[i])] = triangle;
            }
            startsAt = hole.remember(a, triangle);
        }
        for (int i = 0; i < hole.rim; i++) {
            int triangle = startsAt[hole.rimFrom[i]];
            int following = startsAt[hole.rimTo[i]];
            beyond[3 * triangle + 1] = following;
            beyond[3 * following + 2] = triangle;
        }
        last = startsAt[hole.rimFrom[0]];
    }

    /** The side of a triangle that starts at a point. */
    private int sideBack(int triangle, int startingPoint) {
        for (int k = 0; k < 3; k++) {
            if (corner[3 * triangle + k] == startingPoint) {
                return 3 * triangle + k;
            }
        }
        throw new IllegalStateException("triangle " + triangle + " has no corner " + startingPoint);
    }

    /** Centre x, centre y and radius of the circle through the corners of a triangle. */
    double[] circle(int triangle) {
        int a = corner[3 * triangle];
        int b = corner[3 * triangle + 1];
        int c = corner[3 * triangle + 2];
        double ux = x[b] - x[a];
        double uy = y[b] - y[a];
        double vx = x[c] - x[a];
        double vy = y[c] - y[a];
        double twice = 2 * (ux * vy - uy * vx);
        double u = ux * ux + uy * uy;
        double v = vx * vx + vy * vy;
        double dx = (vy * u - uy * v) / twice;
        double dy = (ux * v - vx * u) / twice;
        return new double[] {x[a] + dx, y[a] + dy, Xy.length(dx, dy)};
    }

    static int next(int side) {
        return side % 3 == 2 ? side - 2 : side + 1;
    }

    /** Fixes a side from both of its triangles. */
    void fix(int side) {
        fixed[side] = true;
        if (beyond[side] != NOWHERE) {
            fixed[sideBack(beyond[side], corner[next(side)])] = true;
        }
    }
}
