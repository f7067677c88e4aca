package pitchboard.buying.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.need.Need;
import pitchboard.measure.Length;

/**
 * A piece made of several, end to end.
 *
 * @param whole the piece, longer than every board
 * @param joints the middle of each joint, from the end of the piece that the tape hooks on
 * @param parts one after the other, each half a lap longer at a joint
 */
public record Spliced(Need whole, List<Length> joints, List<Need> parts) {
    public Spliced {
        joints = List.copyOf(joints);
        parts = List.copyOf(parts);
    }

    /**
     * As few joints as can be; of these the choice with the shortest longest part, and then the first.
     *
     * @param longest that a board yields
     * @param lap how far two parts reach past each other
     * @return empty when even all joints leave a part too long
     */
    static Optional<Spliced> find(Need whole, Length longest, Length lap) {
        if (longestPart(whole, whole.joints(), lap).isMoreThan(longest)) {
            return Optional.empty();
        }
        for (int joints = 1; joints <= whole.joints().size(); joints++) {
            List<Length> best = best(whole, joints, 0, List.of(), lap);
            if (!best.isEmpty() && longestPart(whole, best, lap).isAtMost(longest)) {
                return Optional.of(new Spliced(whole, best, parts(whole, best, lap)));
            }
        }
        return Optional.empty();
    }

    private static List<Length> best(Need whole, int joints, int from, List<Length> chosen, Length lap) {
        if (joints == 0) {
            return chosen;
        }
        List<Length> best = List.of();
        for (int at = from; at <= whole.joints().size() - joints; at++) {
            List<Length> longer = new ArrayList<>(chosen);
            longer.add(whole.joints().get(at));
            List<Length> found = best(whole, joints - 1, at + 1, longer, lap);
            if (best.isEmpty() || longestPart(whole, found, lap).isLessThan(longestPart(whole, best, lap))) {
                best = found;
            }
        }
        return best;
    }

    private static Length longestPart(Need whole, List<Length> joints, Length lap) {
        Length longest = Length.ZERO;
        for (Need part : parts(whole, joints, lap)) {
            longest = Length.max(longest, part.length());
        }
        return longest;
    }

    private static List<Need> parts(Need whole, List<Length> joints, Length lap) {
        List<Need> parts = new ArrayList<>();
        Length from = Length.ZERO;
        for (int number = 1; number <= joints.size() + 1; number++) {
            boolean last = number > joints.size();
            Length to = last ? whole.length() : joints.get(number - 1);
            Length halves = lap.times(number == 1 || last ? 1 : 2).dividedBy(2);
            parts.add(new Need(
                    whole.mark() + "-" + number,
                    whole.name() + ", part " + number + " of " + (joints.size() + 1),
                    whole.use(),
                    whole.count(),
                    whole.thickness(),
                    whole.width(),
                    to.minus(from).plus(halves),
                    List.of(),
                    Optional.empty()));
            from = to;
        }
        return parts;
    }
}
