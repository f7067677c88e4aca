package pitchboard.stair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Judges one candidate after the other, and lets go of those that nobody will ask for: what has more against it than
 * another that is not allowed either is no near miss. That spares most of the judging.
 */
final class Sieve {
    private final Gate wood;
    private final Gate code;
    /** The least that any candidate that is not allowed has against it so far. */
    private int fewest = Integer.MAX_VALUE - 1;

    Sieve(Gate wood, Gate code) {
        this.wood = wood;
        this.code = code;
    }

    /** Everything that stands against it, or nothing when that is too much for a near miss. */
    Optional<Option> judge(Stair stair) {
        // Because the code has the quicker answers, it is asked first, though the wood stands first in the list.
        List<Objection> ofCode = code.firstObjections(stair, fewest + 1);
        if (ofCode.size() > fewest) {
            return Optional.empty();
        }
        List<Objection> ofWood = wood.objections(stair);
        int count = ofCode.size() + ofWood.size();
        if (count > fewest) {
            return Optional.empty();
        }
        if (count > 0) {
            fewest = count;
        }
        return Optional.of(option(stair, ofWood, ofCode));
    }

    /** Everything that stands against it, however much. */
    Option judgeInAnyCase(Stair stair) {
        Option option = option(stair, wood.objections(stair), code.objections(stair));
        if (!option.isAllowed()) {
            fewest = Math.min(fewest, option.objections().size());
        }
        return option;
    }

    private static Option option(Stair stair, List<Objection> ofWood, List<Objection> ofCode) {
        List<Objection> against = new ArrayList<>(ofWood);
        against.addAll(ofCode);
        return new Option(stair, against);
    }
}
