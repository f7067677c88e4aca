package pitchboard.documents.pdf;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads the straight strokes of a page back, in millimetres from its bottom left corner. */
final class Strokes extends PDFGraphicsStreamEngine {
    /** One straight stroke. */
    record Stroke(double fromX, double fromY, double toX, double toY, double width) {
        double length() {
            return Math.hypot(toX - fromX, toY - fromY);
        }
    }

    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Stroke> path = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private Point2D current = new Point2D.Float();
    private Point2D start = new Point2D.Float();

    private Strokes(PDPage page) {
        super(page);
    }

    static List<Stroke> of(PDPage page) throws IOException {
        Strokes reader = new Strokes(page);
        reader.processPage(page);
        return reader.strokes;
    }

    @Override
    public void moveTo(float x, float y) {
        current = new Point2D.Float(x, y);
        start = current;
    }

    @Override
    public void lineTo(float x, float y) {
        double width = transformWidth(getGraphicsState().getLineWidth());
        path.add(new Stroke(
                current.getX() * MM_PER_POINT,
                current.getY() * MM_PER_POINT,
                x * MM_PER_POINT,
                y * MM_PER_POINT,
                width * MM_PER_POINT));
        current = new Point2D.Float(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        current = new Point2D.Float(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return current;
    }

    @Override
    public void closePath() {
        lineTo((float) start.getX(), (float) start.getY());
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void strokePath() {
        strokes.addAll(path);
        path.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        throw new AssertionError("the writer makes no rectangles");
    }

    @Override
    public void drawImage(PDImage image) {
        throw new AssertionError("the writer makes no images");
    }

    @Override
    public void clip(int windingRule) {
        throw new AssertionError("the writer clips nothing");
    }

    @Override
    public void shadingFill(COSName name) {
        throw new AssertionError("the writer shades nothing");
    }
}
