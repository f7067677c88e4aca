package pitchboard.sheet.strength;

import java.util.Comparator;
import java.util.List;
import pitchboard.carry.MemberFinding;
import pitchboard.measure.Decimals;
import pitchboard.sheet.Box;
import pitchboard.sheet.Fill;
import pitchboard.sheet.Pen;
import pitchboard.sheet.Spot;
import pitchboard.sheet.drafting.Pencil;
import pitchboard.sheet.type.Align;
import pitchboard.sheet.type.Lettering;

/** One bar for each check: how much of what it may a member is used, against a line at all of it. */
final class UseBars {
    private static final double ROW = 5.4;
    private static final double BAR = 2.8;
    private static final double LABEL = 62;
    private static final double NUMBER = 14;
    private static final int MOST_BARS = 14;
    private static final Comparator<MemberFinding> LEAST_ROOM =
            Comparator.comparing(finding -> -finding.ratio().orElse(0.0));

    /** A bar that goes farther is broken off. */
    private static final double MOST = 1.5;

    private final Pencil pencil;

    UseBars(Pencil pencil) {
        this.pencil = pencil;
    }

    /** Returns how far down it reaches. */
    double draw(Box box, List<MemberFinding> findings) {
        List<MemberFinding> all = findings.stream()
                .filter(finding -> finding.ratio().isPresent())
                .sorted(LEAST_ROOM)
                .toList();
        List<MemberFinding> reckoned = all.stream()
                .limit(MOST_BARS)
                .sorted(Comparator.comparing(MemberFinding::topic).thenComparing(LEAST_ROOM))
                .toList();
        if (reckoned.isEmpty()) {
            return box.top();
        }
        double y = box.top() + Lettering.NAME.capHeight();
        pencil.text(Spot.of(box.left(), y), "How much of what it may each is used", Lettering.NAME, Align.LEFT);
        double top = y + 5;
        Box bars = new Box(box.left() + LABEL, top, box.width() - LABEL - NUMBER, reckoned.size() * ROW);
        y = top;
        for (MemberFinding finding : reckoned) {
            row(box, bars, y, finding);
            y += ROW;
        }
        double whole = bars.left() + bars.width() / MOST;
        pencil.line(Pen.CUT, Spot.of(whole, top - 1.5), Spot.of(whole, y));
        pencil.text(Spot.of(whole, top - 2.4), "100 %", Lettering.SMALL, Align.CENTRE);
        return all.size() == reckoned.size() ? y : more(box, y, all.size() - reckoned.size());
    }

    private double more(Box box, double y, int count) {
        double base = y + ROW / 2 + Lettering.NOTE.capHeight() / 2;
        pencil.text(Spot.of(box.left(), base), "and " + count + " that are used less", Lettering.NOTE, Align.LEFT);
        return y + ROW;
    }

    private void row(Box box, Box bars, double top, MemberFinding finding) {
        double ratio = finding.ratio().orElse(0.0);
        double base = top + ROW / 2 + Lettering.NOTE.capHeight() / 2;
        pencil.text(Spot.of(box.left(), base), finding.subject(), Lettering.NOTE, Align.LEFT);
        double length = bars.width() * Math.min(ratio, MOST) / MOST;
        Box bar = new Box(bars.left(), top + (ROW - BAR) / 2, length, BAR);
        pencil.outline(Pen.THIN, ratio > 1 ? Fill.BLACK : Fill.SHADE, bar.corners());
        if (ratio > MOST) {
            broken(bar);
        }
        String number = Decimals.fixed(ratio * 100, 0) + " %";
        Lettering lettering = ratio > 1 ? Lettering.HEAD : Lettering.NOTE;
        pencil.text(Spot.of(box.right(), base), number, lettering, Align.RIGHT);
    }

    /** Two slanting gaps say that the bar is longer than drawn. */
    private void broken(Box bar) {
        for (int i = 0; i < 2; i++) {
            double x = bar.right() - 4 + 1.8 * i;
            pencil.fill(
                    Fill.WHITE,
                    List.of(
                            Spot.of(x, bar.bottom() + 0.5),
                            Spot.of(x + 0.8, bar.bottom() + 0.5),
                            Spot.of(x + 1.8, bar.top() - 0.5),
                            Spot.of(x + 1, bar.top() - 0.5)));
        }
    }
}
