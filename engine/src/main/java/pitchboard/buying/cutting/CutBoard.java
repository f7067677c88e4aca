package pitchboard.buying.cutting;

import java.util.List;

/**
 * One board and what is cut from it.
 *
 * @param supply which of the problem's supplies it is, counted from 0
 * @param demands which of the problem's demands each piece is, counted from 0, in the order they are cut
 */
public record CutBoard(int supply, List<Integer> demands) {
    public CutBoard {
        demands = List.copyOf(demands);
    }

    /** What pieces and the kerfs between them take of the board, in ticks. */
    public long filled(CutProblem problem) {
        long filled = 0;
        for (int demand : demands) {
            filled += problem.demands().get(demand).length() + (filled == 0 ? 0 : problem.kerf());
        }
        return filled;
    }

    /** What is left in one piece behind the last cut, in ticks; zero when that cut takes the rest. */
    public long left(CutProblem problem) {
        long rest = problem.supplies().get(supply).length() - filled(problem);
        return Math.max(0, demands.isEmpty() ? rest : rest - problem.kerf());
    }
}
