package pitchboard.buying.relaxing;

import java.util.ArrayList;
import java.util.List;

/**
 * What the relaxation would do, copied out before it is asked something else.
 *
 * @param boards of each stock, in fractions
 * @param wholePatterns each pattern as often as it is cut in full
 */
@SuppressWarnings("ArrayRecordComponent") // read in the inner loops of the search, never compared
public record Fractions(double[] boards, List<Pattern> wholePatterns) {
    private static final double NEARLY = 1e-5;

    public static Fractions of(Model model, Relaxation relaxation) {
        double[] boards = new double[model.stocks()];
        for (int stock = 0; stock < boards.length; stock++) {
            boards[stock] = relaxation.simplex.boards(stock);
        }
        List<Pattern> whole = new ArrayList<>();
        for (int index = 0; index < relaxation.patterns.size(); index++) {
            for (int left = whole(relaxation.simplex.times(index)); left > 0; left--) {
                whole.add(relaxation.patterns.get(index));
            }
        }
        return new Fractions(boards, whole);
    }

    /** How often in full; a hair's breadth below counts. */
    public static int whole(double times) {
        return (int) Math.floor(times + NEARLY);
    }
}
