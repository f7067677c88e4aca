package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import pitchboard.buying.relaxing.Effort;
import pitchboard.buying.relaxing.Model;
import pitchboard.buying.relaxing.Pattern;
import pitchboard.buying.relaxing.Patterns;
import pitchboard.buying.relaxing.Prices;
import pitchboard.buying.relaxing.Relaxation;

/** Lists every filling of a board that has the longest piece missing, has no room for another piece, and is not hopeless. */
final class Candidates {
    private static final int MOST = 3000;
    private static final int MOST_LOOKED_AT = 200_000;

    private final Model model;
    private final Effort effort;
    private final List<Pattern> found = new ArrayList<>();
    private final int[] counts;
    private int looked;

    Candidates(Model model, Effort effort) {
        this.model = model;
        this.effort = effort;
        counts = new int[model.kinds()];
    }

    /** @return whether the list is complete */
    boolean list(Rest rest, List<Prices> filters) {
        found.clear();
        looked = 0;
        boolean complete = true;
        for (int stock = 0; complete && stock < model.stocks(); stock++) {
            if (rest.boards[stock] > 0 && model.room[stock] >= model.weight[rest.longest()]) {
                complete = fill(stock, rest, filters);
            }
        }
        effort.spend(looked / 1000);
        return complete;
    }

    /** What was found, those first that the relaxation cuts oftenest. */
    List<Pattern> found(Relaxation relaxation) {
        double[] times = new double[found.size()];
        List<Integer> order = new ArrayList<>();
        for (int at = 0; at < found.size(); at++) {
            int index = relaxation.patterns.indexOf(found.get(at));
            times[at] = index < 0 ? 0 : relaxation.simplex.times(index);
            order.add(at);
        }
        order.sort(Comparator.comparingDouble(at -> -times[at]));
        List<Pattern> sorted = new ArrayList<>();
        order.forEach(at -> sorted.add(found.get(at)));
        return sorted;
    }

    /** Longest first, in the manner of an odometer. */
    private boolean fill(int stock, Rest rest, List<Prices> filters) {
        long[] slack = new long[filters.size()];
        for (int i = 0; i < slack.length; i++) {
            slack[i] = filters.get(i).spare(rest.left, rest.boards);
        }
        long waste = waste(rest);
        int first = rest.longest();
        Arrays.fill(counts, 0);
        int room = model.room[stock];
        int kind = first;
        while (true) {
            for (; kind < counts.length; kind++) {
                counts[kind] = Math.min(rest.left[kind], room / model.weight[kind]);
                room -= counts[kind] * model.weight[kind];
            }
            if (room <= waste && isFull(first, rest.left, room) && isHopeful(stock, filters, slack)) {
                found.add(pattern(stock));
            }
            if (++looked > MOST_LOOKED_AT || found.size() > MOST) {
                return false;
            }
            // Fewer of the shortest kind alone would leave room for it; so it goes altogether, with one of the kind
            // before.
            kind = counts.length - 1;
            room += counts[kind] * model.weight[kind];
            counts[kind] = 0;
            while (kind >= first && counts[kind] == 0) {
                kind--;
            }
            if (kind < first || (kind == first && counts[first] == 1)) {
                return true;
            }
            counts[kind]--;
            room += model.weight[kind];
            kind++;
        }
    }

    private long waste(Rest rest) {
        long waste = 0;
        for (int stock = 0; stock < rest.boards.length; stock++) {
            waste += (long) rest.boards[stock] * model.room[stock];
        }
        for (int kind = 0; kind < rest.left.length; kind++) {
            waste -= (long) rest.left[kind] * model.weight[kind];
        }
        return waste;
    }

    private boolean isFull(int first, int[] left, int room) {
        for (int kind = first; kind < counts.length; kind++) {
            if (model.weight[kind] <= room && counts[kind] < left[kind]) {
                return false;
            }
        }
        return true;
    }

    private boolean isHopeful(int stock, List<Prices> filters, long[] slack) {
        for (int i = 0; i < slack.length; i++) {
            Prices prices = filters.get(i);
            long worth = 0;
            for (int kind = 0; kind < counts.length; kind++) {
                worth += counts[kind] * prices.worth()[kind];
            }
            if (prices.yield()[stock] - worth > slack[i]) {
                return false;
            }
        }
        return true;
    }

    private Pattern pattern(int stock) {
        int used = 0;
        for (int each : counts) {
            used += each > 0 ? 1 : 0;
        }
        return Patterns.of(stock, counts, used);
    }
}
