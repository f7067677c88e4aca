package pitchboard.buying.search;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Fractions;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Pattern;
import pitchboard.buying.relaxing.Prices;
import pitchboard.buying.relaxing.Relaxation;

/**
 * Whether given boards yield all the pieces. First goes straight down the relaxation, fixing what it cuts oftenest; then
 * tries every way to cut the longest piece still missing, and every way after that, leaving out what whole-number prices
 * show to be hopeless.
 */
final class Packing {
    private static final int PASSES = 20;
    private static final int PASSES_LATER = 5;

    private final Model model;
    private final Relaxation relaxation;
    private final Candidates candidates;
    private final Effort effort;
    private final Refill refill;

    Packing(Model model, Relaxation relaxation, Effort effort) {
        this.model = model;
        this.relaxation = relaxation;
        this.effort = effort;
        refill = new Refill(model, effort);
        candidates = new Candidates(model, effort);
    }

    enum Verdict {
        FOUND,
        NONE,
        GAVE_UP
    }

    /** @param patterns one for each board used; empty unless found */
    record Answer(Verdict verdict, List<Pattern> patterns) {
        static final Answer NONE = new Answer(Verdict.NONE, List.of());
        static final Answer GAVE_UP = new Answer(Verdict.GAVE_UP, List.of());
    }

    /**
     * @param boards of each stock
     * @param filters prices for all the pieces
     * @param patience how many plans begun to look at
     */
    Answer search(int[] boards, List<Prices> filters, int patience) {
        Answer straight = quick(boards);
        return straight.verdict() == Verdict.GAVE_UP ? deep(boards, filters, patience) : straight;
    }

    /**
     * Straight down alone: takes what the relaxation cuts in full, tries to fill the boards left, or else takes what it
     * cuts oftenest and asks it again.
     */
    Answer quick(int[] boards) {
        Rest rest = new Rest(model.demand, boards);
        int passes = PASSES;
        while (!rest.isDone()) {
            Relaxation.Answer answer = relaxation.solve(rest.left, rest.boards, rest.boards, Long.MAX_VALUE);
            if (answer == Relaxation.Answer.OVER && rest.taken().isEmpty()) {
                return Answer.NONE;
            }
            if (answer != Relaxation.Answer.SOLVED || !fix(rest)) {
                return Answer.GAVE_UP;
            }
            rest = refill.finish(rest, passes);
            passes = PASSES_LATER;
        }
        return new Answer(Verdict.FOUND, rest.taken());
    }

    /** Takes every pattern as often as the relaxation cuts it in full, or else the oftenest once. */
    private boolean fix(Rest rest) {
        int oftenest = -1;
        boolean any = false;
        for (int index = 0; index < relaxation.patterns.size(); index++) {
            double times = relaxation.simplex.times(index);
            Pattern pattern = relaxation.patterns.get(index);
            if (pattern.isEmpty() || times <= 0) {
                continue;
            }
            for (int whole = Fractions.whole(times); whole > 0; whole--) {
                any |= rest.take(pattern);
            }
            if (oftenest < 0 || times > relaxation.simplex.times(oftenest)) {
                oftenest = index;
            }
        }
        return any || (oftenest >= 0 && rest.take(relaxation.patterns.get(oftenest)));
    }

    /** Every way to cut the longest piece missing, and every way after that. */
    Answer deep(int[] boards, List<Prices> filters, int patience) {
        Deque<Branching> stack = new ArrayDeque<>();
        boolean sure = true;
        if (isHopeful(new Rest(model.demand, boards), filters)) {
            stack.push(branching(new Rest(model.demand, boards), filters));
        }
        for (int looked = 0; !stack.isEmpty(); looked++) {
            if (looked >= patience || effort.isSpent()) {
                return Answer.GAVE_UP;
            }
            Branching top = stack.peek();
            if (!top.hasNext()) {
                sure &= top.isComplete();
                stack.pop();
                continue;
            }
            Rest below = top.next();
            if (below.isDone()) {
                return new Answer(Verdict.FOUND, below.taken());
            }
            if (isHopeful(below, filters)) {
                stack.push(branching(below, filters));
            }
        }
        return sure ? Answer.NONE : Answer.GAVE_UP;
    }

    private boolean isHopeful(Rest rest, List<Prices> filters) {
        effort.spend(1);
        for (Prices prices : filters) {
            if (prices.spare(rest.left, rest.boards) < 0) {
                return false;
            }
        }
        return relaxation.solve(rest.left, rest.boards, rest.boards, Long.MAX_VALUE) != Relaxation.Answer.OVER;
    }

    private Branching branching(Rest rest, List<Prices> filters) {
        boolean complete = candidates.list(rest, filters);
        return new Branching(rest, candidates.found(relaxation), complete);
    }
}
