package pitchboard.documents.pdf;

import java.util.List;
import java.util.Optional;
import pitchboard.documents.Decimals;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Mark;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Run;
import pitchboard.sheet.Spot;

/** Copies the marks of one page out as PDF operators, in millimetres from the bottom left corner. */
final class PdfContent {
    /** How far the handles of a cubic curve lie from its ends, for an arc: 4/3 tan(sweep/4), in radii. */
    private static final String HEX = "0123456789ABCDEF";

    private static final double HANDLE = 4.0 / 3;

    private final double pageHeight;
    private final PdfFonts fonts;
    private final StringBuilder out = new StringBuilder();
    private Optional<Pen> pen = Optional.empty();
    private double brightness;

    PdfContent(double pageHeight, PdfFonts fonts) {
        this.pageHeight = pageHeight;
        this.fonts = fonts;
    }

    /** The operators of all marks, under a scale that makes the unit a millimetre. */
    String write(List<Mark> marks) {
        numbers(72 / 25.4, 0, 0, 72 / 25.4, 0, 0).append("cm\n");
        marks.forEach(this::mark);
        return out.toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Line line) {
            use(line.pen());
            path(line.spots());
            out.append("S\n");
        } else if (mark instanceof Mark.Shape shape) {
            paint(shape.pen(), shape.fill(), () -> path(shape.spots()));
        } else if (mark instanceof Mark.Disc disc) {
            paint(disc.pen(), disc.fill(), () -> arc(disc.centre(), disc.radius(), 0, 360));
        } else if (mark instanceof Mark.Arc arc) {
            use(arc.pen());
            arc(arc.centre(), arc.radius(), arc.from(), arc.sweep());
            out.append("S\n");
        } else if (mark instanceof Mark.Text text) {
            text(text);
        } else if (mark instanceof Mark.Dimension dimension) {
            dimension.strokes().forEach(this::mark);
            text(dimension.label());
        }
    }

    private void paint(Optional<Pen> edge, Optional<Fill> fill, Runnable path) {
        edge.ifPresent(this::use);
        fill.ifPresent(tint -> brightness(tint.brightness()));
        path.run();
        out.append(edge.isPresent() ? fill.isPresent() ? "b\n" : "s\n" : "f\n");
    }

    private void use(Pen wanted) {
        if (pen.filter(wanted::equals).isPresent()) {
            return;
        }
        numbers(wanted.widthMm()).append("w [");
        wanted.dashes().forEach(this::numbers);
        out.append("] 0 d\n");
        pen = Optional.of(wanted);
    }

    private void brightness(double wanted) {
        if (wanted != brightness) {
            numbers(wanted).append("g\n");
            brightness = wanted;
        }
    }

    private void path(List<Spot> spots) {
        for (int i = 0; i < spots.size(); i++) {
            spot(spots.get(i)).append(i == 0 ? "m " : "l ");
        }
    }

    private void arc(Spot centre, double radius, double from, double sweep) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweep) / 90));
        double piece = sweep / pieces;
        double handle = radius * HANDLE * Math.tan(Math.toRadians(piece / 4));
        spot(centre.toward(from, radius)).append("m ");
        for (int i = 0; i < pieces; i++) {
            double start = from + i * piece;
            double end = start + piece;
            spot(centre.toward(start, radius).toward(start + 90, handle));
            spot(centre.toward(end, radius).toward(end - 90, handle));
            spot(centre.toward(end, radius)).append("c ");
        }
    }

    private void text(Mark.Text text) {
        brightness(0);
        double radians = Math.toRadians(text.turn());
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        // Because raised and lowered figures would be read as loose ones.
        boolean isPieced = text.runs().size() > 1;
        if (isPieced) {
            actually(text.reads());
        }
        out.append("BT\n");
        for (Run run : text.runs()) {
            Spot at = text.at().toward(text.turn(), run.across()).toward(text.turn() + 90, run.up());
            out.append('/').append(fonts.name(run.face())).append(' ');
            numbers(run.em()).append("Tf ");
            numbers(cos, sin, -sin, cos, at.x(), pageHeight - at.y()).append("Tm ");
            fonts.encode(run, out).append("Tj\n");
        }
        out.append(isPieced ? "ET\nEMC\n" : "ET\n");
    }

    /** Says what the letters that follow read as. */
    private void actually(String reads) {
        out.append("/Span <</ActualText <FEFF");
        for (int i = 0; i < reads.length(); i++) {
            for (int shift = 12; shift >= 0; shift -= 4) {
                out.append(HEX.charAt((reads.charAt(i) >> shift) & 15));
            }
        }
        out.append(">>> BDC\n");
    }

    private StringBuilder spot(Spot spot) {
        return numbers(spot.x(), pageHeight - spot.y());
    }

    private StringBuilder numbers(double... values) {
        for (double value : values) {
            Decimals.write(out, value).append(' ');
        }
        return out;
    }
}
