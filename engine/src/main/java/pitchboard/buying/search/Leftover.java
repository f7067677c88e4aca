package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.List;
import pitchboard.buying.cutting.CutBoard;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Supply;
import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Relaxation;

/**
 * Cuts the same bought boards, and what is on the rack, so that the longest possible piece of a bought board is left. Asks
 * of each length bought how short one such board could be and all pieces still fit.
 */
final class Leftover {
    private static final int PATIENCE = 300;

    private final CutProblem problem;
    private final Effort effort;
    private final int[] taken;
    private final long needed;
    private List<CutBoard> boards;
    private boolean sure = true;

    private Leftover(CutProblem problem, List<CutBoard> boards, Effort effort) {
        this.problem = problem;
        this.effort = effort;
        this.boards = boards;
        taken = new int[problem.supplies().size()];
        boards.forEach(board -> taken[board.supply()]++);
        needed = problem.demands().stream()
                .mapToLong(demand -> demand.quantity() * (demand.length() + problem.kerf()))
                .sum();
    }

    static Leftover longest(CutProblem problem, List<CutBoard> boards, Effort effort) {
        Leftover leftover = new Leftover(problem, boards, effort);
        for (int supply = 0; supply < problem.supplies().size(); supply++) {
            if (leftover.taken[supply] > 0 && problem.supplies().get(supply).price() > 0) {
                leftover.lengthen(supply);
            }
        }
        return leftover;
    }

    List<CutBoard> boards() {
        return boards;
    }

    /** Whether no longer piece can be left. */
    boolean isSure() {
        return sure;
    }

    /** Looks for a longer piece to leave of one board of this supply. */
    private void lengthen(int supply) {
        long whole = problem.supplies().get(supply).length();
        long shortest = Math.max(1, needed - room() + whole);
        long longest = whole - problem.kerf() - left() - 1;
        boolean first = true;
        while (shortest <= longest) {
            long tried = first ? longest : (shortest + longest) >>> 1;
            first = false;
            Packing.Answer answer = answer(supply, tried);
            if (answer.verdict() == Packing.Verdict.FOUND) {
                longest = whole - problem.kerf() - left() - 1;
            } else {
                sure &= answer.verdict() == Packing.Verdict.NONE;
                shortest = tried + 1;
            }
        }
    }

    /** The room of all boards, kerfs added: those bought and the whole rack. */
    private long room() {
        long room = 0;
        for (int supply = 0; supply < taken.length; supply++) {
            Supply each = problem.supplies().get(supply);
            long count = each.price() > 0 ? taken[supply] : Math.min(each.onHand(), problem.pieces());
            room += count * (Math.min(each.length(), needed) + problem.kerf());
        }
        return room;
    }

    private long left() {
        return boards.stream()
                .filter(board -> problem.supplies().get(board.supply()).price() > 0)
                .mapToLong(board -> board.left(problem))
                .max()
                .orElse(0);
    }

    /** Whether the pieces fit when one board of the supply is cut off at this length; keeps the plan if so. */
    private Packing.Answer answer(int supply, long length) {
        List<Supply> supplies = new ArrayList<>();
        for (int each = 0; each < taken.length; each++) {
            Supply whole = problem.supplies().get(each);
            int count = whole.price() > 0 ? taken[each] - (each == supply ? 1 : 0) : whole.onHand();
            supplies.add(new Supply(whole.length(), 0, count));
        }
        supplies.add(new Supply(length, 0, 1));
        CutProblem shorter = new CutProblem(problem.demands(), supplies, problem.kerf());
        Model model = new Model(shorter);
        Relaxation relaxation = new Relaxation(model, effort);
        Packing.Answer answer = new Packing(model, relaxation, effort).search(model.most, List.of(), PATIENCE);
        if (answer.verdict() == Packing.Verdict.FOUND) {
            keep(new Boards(shorter, model).cut(answer.patterns()), supply);
        }
        return answer;
    }

    private void keep(List<CutBoard> found, int supply) {
        List<CutBoard> kept = new ArrayList<>();
        for (CutBoard board : found) {
            kept.add(board.supply() == taken.length ? new CutBoard(supply, board.demands()) : board);
        }
        boards = Boards.inOrder(kept);
    }
}
