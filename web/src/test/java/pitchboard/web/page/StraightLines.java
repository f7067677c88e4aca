package pitchboard.web.page;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Measures the straight lines on a page that a browser printed. */
final class StraightLines extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Double> lengths = new ArrayList<>();
    private Point2D at = new Point2D.Float();

    private StraightLines(PDPage page) {
        super(page);
    }

    /** How long the level ones are, in millimetres. */
    static List<Double> level(PDPage page) throws IOException {
        StraightLines reader = new StraightLines(page);
        reader.processPage(page);
        return reader.lengths;
    }

    @Override
    public void moveTo(float x, float y) {
        at = new Point2D.Float(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        if (Math.abs(y - at.getY()) < 0.01) {
            lengths.add(Math.abs(x - at.getX()) * MM_PER_POINT);
        }
        moveTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        moveTo(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return at;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
    }

    @Override
    public void closePath() {
        // The way back to the beginning of a shape is none of its edges that were drawn.
    }

    @Override
    public void endPath() {
        // What a path was for does not matter here.
    }

    @Override
    public void strokePath() {
        endPath();
    }

    @Override
    public void fillPath(int windingRule) {
        endPath();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        endPath();
    }

    @Override
    public void clip(int windingRule) {
        endPath();
    }

    @Override
    public void drawImage(PDImage image) {
        throw new AssertionError("the sheets hold no images");
    }

    @Override
    public void shadingFill(COSName shadingName) {
        throw new AssertionError("the sheets hold no shades");
    }
}
