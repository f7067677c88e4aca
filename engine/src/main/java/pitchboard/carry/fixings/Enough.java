package pitchboard.carry.fixings;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Fasteners;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** How many of a common kind would hold what is asked, where nobody said what does. */
public final class Enough {
    /** One alone lets a board turn. */
    private static final int LEAST = 2;

    private static final int MOST = 12;
    private static final Length SMALLEST = Length.inches(0, 3, 8);

    private Enough() {}

    /** What the trade has at hand for a board so thick, the lightest first. */
    private static List<Fasteners.Sized> kinds(Joint joint) {
        Length reach = joint.through().plus(Length.inches(2, 1, 2));
        return List.of(
                sized(Fasteners.Kind.LAG_SCREW, SMALLEST, reach),
                sized(Fasteners.Kind.LAG_SCREW, Length.inches(0, 1, 2), reach));
    }

    private static Fasteners.Sized sized(Fasteners.Kind kind, Length diameter, Length length) {
        return new Fasteners.Sized(kind, Optional.of(diameter), Optional.empty(), onShelf(length), 1);
    }

    /** Lag screws come in half inches. */
    private static Length onShelf(Length length) {
        Length half = Length.inches(0, 1, 2);
        return half.times(Math.max(1, length.wholeTimes(half)));
    }

    /** Such as {@code 4 lag screws, 3/8" x 4"}; empty when no common kind is enough. */
    public static Optional<Phrase> find(Joint joint, FixingChecks.Asked asked, Units units) {
        for (Fasteners.Sized kind : kinds(joint)) {
            for (int number = LEAST; number <= MOST; number++) {
                Fasteners.Sized all =
                        new Fasteners.Sized(kind.kind(), kind.diameter(), kind.gauge(), kind.length(), number);
                boolean enough =
                        new FixingChecks(all, joint, units).holds(asked).match(Utilisation::isEnough, because -> false);
                if (enough) {
                    return Optional.of(words(all));
                }
            }
        }
        return Optional.empty();
    }

    private static Phrase words(Fasteners.Sized all) {
        Quantity[] quantities = {new Count(all.number()), all.diameter().orElseThrow(), all.length()};
        return Phrase.of("{} lag screws, {} x {}", quantities);
    }
}
