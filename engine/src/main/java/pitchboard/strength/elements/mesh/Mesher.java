package pitchboard.strength.elements.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pitchboard.strength.elements.algebra.TooLarge;

/**
 * Meshes the inside of an outline: places along the sides, triangles between them, then a new point in the middle of every
 * circle that is too large for its place, until none is (L. P. Chew, Guaranteed-quality triangular meshes, Cornell TR
 * 89-983, 1989, from memory), and at last every inner point moved toward the middle of its neighbours.
 */
public final class Mesher {
    /** The circle of a triangle may have this radius for a side of one; an even-sided triangle has 0.577. */
    private static final double LARGEST_RADIUS = 0.68;

    private static final int MOST_POINTS = 20_000;
    private static final int MOST_HALVINGS = 40;

    private final SizeField field;
    private final Delaunay net;
    private boolean[] inside = {};
    private int rimPoints;

    private Mesher(Polygon outline, SizeField field) {
        this.field = field;
        double[] xs = outline.corners().stream().mapToDouble(Xy::x).toArray();
        double[] ys = outline.corners().stream().mapToDouble(Xy::y).toArray();
        this.net = new Delaunay(
                Arrays.stream(xs).min().orElseThrow(), Arrays.stream(ys).min().orElseThrow(),
                Arrays.stream(xs).max().orElseThrow(), Arrays.stream(ys).max().orElseThrow());
    }

    /**
     * The mesh; every corner of the outline is a node of it.
     *
     * @param outline without {@link Polygon#troubles}
     * @param fineness how large the sides of triangles are
     * @param fineAt the places where triangles are smallest
     * @throws IllegalArgumentException when the outline has troubles
     * @throws TooLarge when so fine a mesh has too many nodes
     */
    public static Mesh mesh(Polygon outline, Fineness fineness, List<Xy> fineAt) {
        if (!outline.troubles().isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", outline.troubles()));
        }
        SizeField field = new SizeField(fineness, fineAt);
        Mesher mesher = new Mesher(outline, field);
        mesher.layRim(outline);
        mesher.findInside();
        mesher.fill();
        return mesher.mesh();
    }

    private void layRim(Polygon outline) {
        List<Integer> rim = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            for (Xy place : field.along(outline.corner(i), outline.corner(i + 1))) {
                rim.add(net.insert(place.x(), place.y()));
                checkSize();
            }
        }
        for (int round = 0; halveMissing(rim); round++) {
            if (round == MOST_HALVINGS) {
                throw new TooLarge("the outline comes too close to itself to be meshed");
            }
        }
        rimPoints = net.points;
        Sides sides = new Sides(net);
        for (int i = 0; i < rim.size(); i++) {
            net.fix(sides.find(rim.get(i), rim.get((i + 1) % rim.size())));
        }
    }

    /** Halves every piece of the rim that is not the side of a triangle; says whether there was one. */
    private boolean halveMissing(List<Integer> rim) {
        List<Integer> whole = new ArrayList<>();
        boolean halved = false;
        Sides sides = new Sides(net);
        for (int i = 0; i < rim.size(); i++) {
            int from = rim.get(i);
            int to = rim.get((i + 1) % rim.size());
            whole.add(from);
            if (sides.find(from, to) == Delaunay.NOWHERE) {
                whole.add(net.insert((net.x[from] + net.x[to]) / 2, (net.y[from] + net.y[to]) / 2));
                halved = true;
                checkSize();
            }
        }
        rim.clear();
        rim.addAll(whole);
        return halved;
    }

    private void checkSize() {
        if (net.points > MOST_POINTS) {
            throw new TooLarge("so fine a mesh has more than " + MOST_POINTS + " corners");
        }
    }

    /** What cannot be reached from far outside without crossing the rim. */
    private void findInside() {
        inside = new boolean[net.triangles];
        Arrays.fill(inside, true);
        int[] queue = new int[net.triangles];
        int queued = 0;
        for (int triangle = 0; triangle < net.triangles; triangle++) {
            if (net.corner[3 * triangle] < Delaunay.OUTER_POINTS
                    || net.corner[3 * triangle + 1] < Delaunay.OUTER_POINTS
                    || net.corner[3 * triangle + 2] < Delaunay.OUTER_POINTS) {
                inside[triangle] = false;
                queue[queued++] = triangle;
            }
        }
        for (int k = 0; k < queued; k++) {
            for (int side = 3 * queue[k]; side < 3 * queue[k] + 3; side++) {
                int other = net.beyond[side];
                if (other != Delaunay.NOWHERE && !net.fixed[side] && inside[other]) {
                    inside[other] = false;
                    queue[queued++] = other;
                }
            }
        }
    }

    private boolean isInside(int triangle) {
        return triangle >= inside.length || inside[triangle];
    }

    private void fill() {
        boolean again = true;
        while (again) {
            again = false;
            for (int triangle = 0; triangle < net.triangles; triangle++) {
                if (isInside(triangle) && splitIfLarge(triangle)) {
                    again = true;
                    checkSize();
                }
            }
        }
    }

    private boolean splitIfLarge(int triangle) {
        double[] circle = net.circle(triangle);
        return circle[2] > LARGEST_RADIUS * field.at(circle[0], circle[1])
                && net.insertInside(circle[0], circle[1], triangle) != Delaunay.NOWHERE;
    }

    private Mesh mesh() {
        int[] triangles = new int[3 * net.triangles];
        int count = 0;
        for (int triangle = 0; triangle < net.triangles; triangle++) {
            if (isInside(triangle)) {
                for (int k = 0; k < 3; k++) {
                    triangles[count++] = net.corner[3 * triangle + k] - Delaunay.OUTER_POINTS;
                }
            }
        }
        triangles = Arrays.copyOf(triangles, count);
        double[] x = Arrays.copyOfRange(net.x, Delaunay.OUTER_POINTS, net.points);
        double[] y = Arrays.copyOfRange(net.y, Delaunay.OUTER_POINTS, net.points);
        new Smoothing(x, y, triangles, rimPoints - Delaunay.OUTER_POINTS).run();
        return Mesh.straight(x, y, triangles);
    }
}
