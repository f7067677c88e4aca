package pitchboard.buying.search;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import pitchboard.buying.cutting.CutProblem;
import pitchboard.buying.cutting.Demand;
import pitchboard.buying.cutting.Supply;

/** Problems like a stair's, drawn from a seed: boards of 8 to 16 ft, in eighths of an inch, and a small rack. */
final class RandomCuts {
    private RandomCuts() {}

    /** @param most how many pieces at most */
    static CutProblem draw(long seed, int most) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Supply> supplies = new ArrayList<>();
        long foot = random.nextInt(80, 140);
        for (int feet = 8; feet <= 16; feet += 2) {
            if (random.nextInt(4) > 0 || feet == 16) {
                long price = foot * feet + random.nextInt(200) - 100;
                int onHand = random.nextInt(4) == 0 ? random.nextInt(3) : Supply.NO_LIMIT;
                supplies.add(new Supply(feet * 96L, price, onHand));
            }
        }
        for (int rack = random.nextInt(4); rack > 0; rack--) {
            supplies.add(new Supply(random.nextInt(100, 700), 0, 1));
        }
        List<Demand> demands = new ArrayList<>();
        int pieces = random.nextInt(1, most + 1);
        while (pieces > 0) {
            int quantity = Math.min(pieces, random.nextInt(1, 5));
            long length = random.nextInt(5) == 0 ? random.nextInt(400, 1200) : random.nextInt(80, 460);
            demands.add(new Demand(length, quantity));
            pieces -= quantity;
        }
        return new CutProblem(demands, supplies, random.nextInt(2));
    }
}
