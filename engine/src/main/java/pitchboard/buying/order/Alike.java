package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.List;

/**
 * Boards that are cut alike.
 *
 * @param first number of the first of them in its order, counted from 1
 */
public record Alike(Board board, int first, int count) {
    /** The boards of an order; those that follow each other and are cut alike are one. */
    public static List<Alike> of(StockOrder order) {
        List<Alike> all = new ArrayList<>();
        int number = 1;
        for (Board board : order.boards()) {
            int last = all.size() - 1;
            if (last >= 0 && all.get(last).board.equals(board)) {
                all.set(last, new Alike(board, all.get(last).first, all.get(last).count + 1));
            } else {
                all.add(new Alike(board, number, 1));
            }
            number++;
        }
        return all;
    }
}
