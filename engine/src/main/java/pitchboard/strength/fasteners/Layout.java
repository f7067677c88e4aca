package pitchboard.strength.fasteners;

import java.util.ArrayList;
import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.measure.Length;
import pitchboard.source.Source;
import pitchboard.strength.Answer;
import pitchboard.strength.Factor;
import pitchboard.strength.timber.Nds;

/**
 * Where fasteners of 1/4 in or more stand in a member of softwood, NDS 2018 12.5.1, from memory.
 *
 * @param toEnd from the last fastener to the end the load pulls toward, or away from
 * @param toLoadedEdge from the outer fastener to the edge the load pushes toward
 * @param toOtherEdge to the opposite edge
 * @param inRow from one fastener to the next in a row; absent when it stands alone: then equal to zero
 * @param betweenRows between two rows; zero with one row
 * @param inWood length of the fastener in the member it is judged in
 */
public record Layout(
        Diameter diameter,
        Direction direction,
        Length toEnd,
        Length toLoadedEdge,
        Length toOtherEdge,
        Length inRow,
        Length betweenRows,
        Length inWood) {
    static final Source SOURCE = Nds.SPECIFICATION.memory("12.5.1");

    private static final double SLACK = 1e-9;

    /** How the load lies to the grain of the member. */
    public enum Direction {
        /** Along the grain, toward the end: it can tear out. */
        ALONG_TOWARD_END,
        /** Along the grain, away from the end. */
        ALONG_FROM_END,
        ACROSS
    }

    private double diameters(Length length) {
        return length.approxMm() / 25.4 / diameter.inches();
    }

    /** {@code Cdelta}: the least share of a full end distance and a full spacing; cannot tell where a least one is missed. */
    public Answer<Factor> factor() {
        List<String> missed = tooClose();
        if (!missed.isEmpty()) {
            return Answer.unknown(String.join("; ", missed));
        }
        double share = Math.min(1, diameters(toEnd) / fullEnd());
        if (inRow.isPositive()) {
            share = Math.min(share, diameters(inRow) / 4);
        }
        return Answer.known(
                share > 1 - SLACK
                        ? Factor.idle("Cdelta", "distances", "ends and spacings are full", SOURCE)
                        : new Factor("Cdelta", "distances", share, "an end or a spacing is less than full", SOURCE));
    }

    private double fullEnd() {
        return direction == Direction.ALONG_TOWARD_END ? 7 : 4;
    }

    /** Every least distance that is missed, with what would be right. */
    public List<String> tooClose() {
        List<String> found = new ArrayList<>();
        check(found, "to the end", toEnd, fullEnd() / 2);
        boolean across = direction == Direction.ACROSS;
        check(found, "to the loaded edge", toLoadedEdge, across ? 4 : alongEdge());
        check(found, "to the other edge", toOtherEdge, across ? 1.5 : alongEdge());
        if (inRow.isPositive()) {
            check(found, "in a row", inRow, 3);
        }
        if (betweenRows.isPositive()) {
            check(found, "between rows", betweenRows, across ? rowsAcross() : 1.5);
        }
        return found;
    }

    /** 1.5 D while the fastener is short, else half the distance between rows if that is more. */
    private double alongEdge() {
        double slender = diameters(inWood);
        boolean rows = betweenRows.isPositive();
        return slender <= 6 || !rows ? 1.5 : Math.max(1.5, diameters(betweenRows) / 2);
    }

    /** 2.5 D for l/D of 2 and less, 5 D for 6 and more, even between. */
    private double rowsAcross() {
        double slender = diameters(inWood);
        return slender <= 2 ? 2.5 : slender >= 6 ? 5 : (5 * slender + 10) / 8;
    }

    private void check(List<String> found, String where, Length distance, double least) {
        if (diameters(distance) < least - SLACK) {
            found.add("the distance " + where + " is " + Decimals.trimmed(diameters(distance), 2)
                    + " diameters; at least " + Decimals.trimmed(least, 2) + " are needed");
        }
    }
}
