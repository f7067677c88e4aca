package pitchboard.intake.revision;

import java.util.List;
import pitchboard.intake.written.Written;

/**
 * Whether the items of a list still stand where they stood, so that the same number means the same thing in all three
 * versions. If not, a change of one item could end up in another: then the whole list is a conflict.
 */
final class Order {
    private Order() {}

    /** Always for groups, whose lines have names. */
    static boolean isKept(Written base, Written mine, Written theirs) {
        return !(base instanceof Written.Sequence was
                        && mine instanceof Written.Sequence my
                        && theirs instanceof Written.Sequence their)
                || isKept(was.items(), my.items(), their.items());
    }

    private static boolean isKept(List<Written> base, List<Written> mine, List<Written> theirs) {
        boolean bothResized = mine.size() != base.size() && theirs.size() != base.size();
        return !bothResized && stays(base, mine, theirs) && stays(base, theirs, mine);
    }

    /** Whether one side's list is as long as before with nothing moved, or only its end was added or taken away. */
    private static boolean stays(List<Written> base, List<Written> side, List<Written> other) {
        if (side.size() == base.size()) {
            return !isMoved(base, side);
        }
        int common = Math.min(base.size(), side.size());
        return areSame(base.subList(0, common), side.subList(0, common))
                && areSame(base.subList(common, base.size()), other.subList(common, other.size()));
    }

    private static boolean isMoved(List<Written> base, List<Written> side) {
        for (int i = 0; i < side.size(); i++) {
            Written item = side.get(i);
            if (!isSame(item, base.get(i)) && base.stream().anyMatch(each -> isSame(each, item))) {
                return true;
            }
        }
        return false;
    }

    private static boolean areSame(List<Written> some, List<Written> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (!isSame(some.get(i), others.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSame(Written one, Written other) {
        return Differences.between(one, other).isNone();
    }
}
