package pitchboard.sheet.drafting;

import pitchboard.sheet.Box;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** The ruler that proves the printer: 100 mm along its upper edge, 4 in along its lower. */
public final class CheckRuler {
    /** What the ruler takes up, words included. */
    public static final double WIDTH = 118;

    public static final double HEIGHT = 15.5;

    private static final double INCH = 25.4;
    private static final double EDGE_TO_EDGE = 9;

    private final Pencil pencil;

    public CheckRuler(Pencil pencil) {
        this.pencil = pencil;
    }

    /** Draws the ruler with the top left corner of what it takes up on the spot. */
    public void at(Spot topLeft) {
        Spot zero = topLeft.shifted(3, 0.5);
        pencil.zone("check ruler", new Box(topLeft.x(), topLeft.y(), WIDTH, HEIGHT));
        pencil.line(Pen.OUTLINE, zero, zero.shifted(100, 0));
        pencil.line(Pen.OUTLINE, zero.shifted(0, EDGE_TO_EDGE), zero.shifted(4 * INCH, EDGE_TO_EDGE));
        for (int mm = 0; mm <= 100; mm++) {
            tick(zero.shifted(mm, 0), mm % 10 == 0 ? 3 : mm % 5 == 0 ? 2.2 : 1.3, mm % 10 == 0);
        }
        for (int eighth = 0; eighth <= 32; eighth++) {
            double length = eighth % 8 == 0 ? 3 : eighth % 4 == 0 ? 2.2 : 1.3;
            tick(zero.shifted(eighth * INCH / 8, EDGE_TO_EDGE), -length, eighth % 8 == 0);
        }
        words(zero);
    }

    private void tick(Spot on, double down, boolean isStrong) {
        pencil.line(isStrong ? Pen.PENCIL : Pen.THIN, on, on.shifted(0, down));
    }

    private void words(Spot zero) {
        Lettering small = Lettering.SMALL;
        pencil.text(zero.shifted(101.2, small.capHeight()), "100 mm", small.bold(), Align.LEFT);
        pencil.text(zero.shifted(4 * INCH + 1.2, EDGE_TO_EDGE), "4 in", small.bold(), Align.LEFT);
        pencil.text(
                zero.shifted(50, EDGE_TO_EDGE / 2 + small.capHeight() / 2),
                "measure this ruler: 100 mm and 4 in",
                small.bold(),
                Align.CENTRE);
        pencil.text(
                zero.shifted(0, EDGE_TO_EDGE + 1.8 + small.capHeight()),
                "If it is off, print again at actual size (100 %), not fitted to the page. Until it is right, cut nothing from this sheet.",
                Lettering.SMALL,
                Align.LEFT);
    }
}
