package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Pattern;

/** Turns patterns back into the problem's own boards and pieces. */
final class Boards {
    private final Model model;

    /** For each kind, the problem's demands it stands for, one entry a piece. */
    private final List<List<Integer>> pieces = new ArrayList<>();

    private final int[] handedOut;

    Boards(CutProblem problem, Model model) {
        this.model = model;
        handedOut = new int[model.kinds()];
        for (List<Integer> demands : model.demandsOf) {
            List<Integer> each = new ArrayList<>();
            for (int demand : demands) {
                for (int i = 0; i < problem.demands().get(demand).quantity(); i++) {
                    each.add(demand);
                }
            }
            pieces.add(each);
        }
    }

    /** Longest boards first, and from each board the longest pieces first; a piece cut too often is left out. */
    List<CutBoard> cut(List<Pattern> patterns) {
        List<CutBoard> boards = new ArrayList<>();
        for (Pattern pattern : patterns) {
            List<Integer> demands = new ArrayList<>();
            for (int i = 0; i < pattern.kinds().length; i++) {
                int kind = pattern.kinds()[i];
                int left = pieces.get(kind).size() - handedOut[kind];
                for (int count = Math.min(left, pattern.counts()[i]); count > 0; count--) {
                    demands.add(pieces.get(kind).get(handedOut[kind]++));
                }
            }
            if (!demands.isEmpty()) {
                boards.add(new CutBoard(model.supplyOf[pattern.stock()], demands));
            }
        }
        return inOrder(boards);
    }

    /** By supply, then by the pieces, so that boards cut alike stand together. */
    static List<CutBoard> inOrder(List<CutBoard> boards) {
        List<CutBoard> sorted = new ArrayList<>(boards);
        sorted.sort((a, b) -> {
            if (a.supply() != b.supply()) {
                return Integer.compare(a.supply(), b.supply());
            }
            for (int at = 0; at < Math.min(a.demands().size(), b.demands().size()); at++) {
                int order = Integer.compare(a.demands().get(at), b.demands().get(at));
                if (order != 0) {
                    return order;
                }
            }
            return Integer.compare(b.demands().size(), a.demands().size());
        });
        return sorted;
    }
}
