package pitchboard;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import pitchboard.measure.Length;
import pitchboard.plane.Outline;
import pitchboard.plane.Point;

/** Outlines as an independent geometry library sees them, in millimetres. */
public final class Shapes {
    /** Farther than any stair reaches. */
    public static final double FAR = 1e5;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Shapes() {}

    public static Polygon polygon(Outline outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.corners().forEach(corner -> ring.add(coordinate(corner)));
        ring.add(ring.get(0));
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    /** A polygon through x, y, x, y ... */
    public static Polygon polygon(double... xy) {
        List<Coordinate> ring = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            ring.add(new Coordinate(xy[i], xy[i + 1]));
        }
        ring.add(ring.get(0));
        return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    public static Geometry box(double left, double bottom, double right, double top) {
        return FACTORY.toGeometry(new Envelope(left, right, bottom, top));
    }

    public static LineString line(double x1, double y1, double x2, double y2) {
        return FACTORY.createLineString(new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, y2)});
    }

    public static org.locationtech.jts.geom.Point point(double x, double y) {
        return FACTORY.createPoint(new Coordinate(x, y));
    }

    public static Geometry minus(Geometry from, Geometry cut) {
        return OverlayNGRobust.overlay(from, cut, OverlayNG.DIFFERENCE);
    }

    public static double areaOfDifference(Geometry a, Geometry b) {
        return OverlayNGRobust.overlay(a, b, OverlayNG.SYMDIFFERENCE).getArea();
    }

    public static double mm(Length length) {
        return length.approxMm();
    }

    private static Coordinate coordinate(Point corner) {
        return new Coordinate(mm(corner.x()), mm(corner.y()));
    }
}
