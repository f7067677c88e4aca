package pitchboard.buying.cutting;

import java.util.List;

/** Boards that yield every piece of a problem, and how good the plan is known to be. */
public record CutPlan(List<CutBoard> boards, Proof proof) {
    public CutPlan {
        boards = List.copyOf(boards);
    }

    /** What the boards cost together, in the smallest coin. */
    public long cost(CutProblem problem) {
        return boards.stream()
                .mapToLong(board -> problem.supplies().get(board.supply()).price())
                .reduce(0, Math::addExact);
    }

    /** How many boards have a price. */
    public int bought(CutProblem problem) {
        return (int) boards.stream()
                .filter(board -> problem.supplies().get(board.supply()).price() > 0)
                .count();
    }

    /** The longest piece left of a bought board, in ticks; zero when nothing is left or nothing bought. */
    public long longestLeft(CutProblem problem) {
        return boards.stream()
                .filter(board -> problem.supplies().get(board.supply()).price() > 0)
                .mapToLong(board -> board.left(problem))
                .max()
                .orElse(0);
    }
}
