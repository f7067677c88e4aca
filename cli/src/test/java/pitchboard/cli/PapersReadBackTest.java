package pitchboard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The PDF read back by another hand: pages, words, and lengths measured from its lines. */
final class PapersReadBackTest {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double INCH = 25.4;

    @TempDir
    Path folder;

    private PDDocument papers(String example, String paper) throws IOException {
        String text = Files.readString(Run.example(example)).replaceFirst("(?m)^paper: .*$", "paper: " + paper);
        Path job = Files.writeString(folder.resolve("job.yaml"), text);
        Run.of("papers", job.toString(), "--to", folder.toString());
        return Loader.loadPDF(folder.resolve("job.pdf").toFile());
    }

    private static String words(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    /** Sizes of the papers: ANSI/ASME Y14.1 and ISO 216. */
    @Test
    void pages_are_as_many_as_sheets_and_as_large_as_the_paper() throws IOException {
        try (PDDocument letter = papers("boathouse-loft", "letter")) {
            assertThat(letter.getNumberOfPages()).isEqualTo(31);
            assertThat(letter.getPage(0).getMediaBox().getWidth() / POINTS_PER_MM)
                    .isCloseTo(279.4, within(0.01));
            assertThat(words(letter, 31)).contains("31 of 31");
        }
        try (PDDocument a4 = papers("boathouse-loft", "A4")) {
            assertThat(a4.getPage(0).getMediaBox().getHeight() / POINTS_PER_MM).isCloseTo(210, within(0.01));
        }
    }

    @Test
    void every_sheet_says_which_job_and_which_inputs() throws IOException {
        try (PDDocument document = papers("boathouse-loft", "letter")) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                assertThat(words(document, page))
                        .contains("Stair to the sail loft", "14 May 2027", "IRC 2021", page + " of 31");
            }
            assertThat(words(document, 1)).contains("8′-9 3⁄4″", "nothing fails");
            assertThat(words(document, 3)).contains("from datum", "153 1⁄8″");
        }
    }

    /**
     * Rise 105 3/4 in / 14 and run 10 in, worked by hand; the slope by Pythagoras. The slope lies level over two pages
     * that share 14 mm, so the two pieces of a line at an angle share 14 mm over the cosine of that angle.
     */
    @Test
    void the_pitch_board_is_true_to_a_tenth_of_a_millimetre() throws IOException {
        double rise = 105.75 / 14 * INCH;
        double run = 10 * INCH;
        double slope = Math.hypot(rise, run);
        double shared = 14;
        try (PDDocument document = papers("boathouse-loft", "letter")) {
            List<Double> left = Lengths.heavy(document.getPage(9));
            List<Double> right = Lengths.heavy(document.getPage(10));
            assertThat(both(left, right)).anySatisfy(length -> isTrue(length, rise));
            assertThat(sums(left, right))
                    .anySatisfy(length -> isTrue(length - shared, slope))
                    .anySatisfy(length -> isTrue(length - shared * slope / run, run));
        }
    }

    private static void isTrue(double measured, double length) {
        assertThat(measured).isCloseTo(length, within(0.1));
    }

    private static List<Double> both(List<Double> left, List<Double> right) {
        return Stream.concat(left.stream(), right.stream()).toList();
    }

    /** Every piece on one page with every piece on the other. */
    private static List<Double> sums(List<Double> left, List<Double> right) {
        return left.stream()
                .flatMap(piece -> right.stream().map(other -> piece + other))
                .toList();
    }

    /** First cut: rise less tread less sole board, 105 3/4 / 14 - 1 1/2 - 1 1/2 in, worked by hand. */
    @Test
    void the_first_cut_of_the_foot_pattern_is_true_to_a_tenth_of_a_millimetre() throws IOException {
        try (PDDocument document = papers("boathouse-loft", "letter")) {
            double firstCut = (105.75 / 14 - 3) * INCH;
            assertThat(Lengths.heavy(document.getPage(11))).anySatisfy(length -> isTrue(length, firstCut));
        }
    }

    /** Lengths in millimetres of the straight strokes drawn with the heaviest pen. */
    private static final class Lengths extends PDFGraphicsStreamEngine {
        private static final double HEAVY = 0.69;

        private final List<Double> found = new ArrayList<>();
        private final List<Double> pending = new ArrayList<>();
        private Point2D current = new Point2D.Double();
        private Point2D start = new Point2D.Double();

        private Lengths(PDPage page) {
            super(page);
        }

        static List<Double> heavy(PDPage page) throws IOException {
            Lengths lengths = new Lengths(page);
            lengths.processPage(page);
            return lengths.found;
        }

        @Override
        public void moveTo(float x, float y) {
            current = new Point2D.Double(x, y);
            start = current;
        }

        @Override
        public void lineTo(float x, float y) {
            Point2D next = new Point2D.Double(x, y);
            pending.add(current.distance(next) / POINTS_PER_MM);
            current = next;
        }

        @Override
        public void closePath() {
            pending.add(current.distance(start) / POINTS_PER_MM);
        }

        @Override
        public void strokePath() {
            double width = getGraphicsState().getLineWidth()
                    * getGraphicsState().getCurrentTransformationMatrix().getScalingFactorX()
                    / POINTS_PER_MM;
            if (width > HEAVY) {
                found.addAll(pending);
            }
            pending.clear();
        }

        @Override
        public void fillAndStrokePath(int windingRule) {
            strokePath();
        }

        @Override
        public void fillPath(int windingRule) {
            pending.clear();
        }

        @Override
        public void endPath() {
            pending.clear();
        }

        @Override
        public Point2D getCurrentPoint() {
            return current;
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int windingRule) {}

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            current = new Point2D.Double(x3, y3);
        }

        @Override
        public void shadingFill(COSName name) {}
    }
}
