package pitchboard.carry.fixings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import pitchboard.brief.Fasteners;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.strength.Answer;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** How many of a common kind would hold what is asked, where nobody said what does. */
public final class Enough {
    /** One alone lets a board turn. */
    private static final int LEAST = 2;

    private static final int MOST = 12;
    private static final Length SMALLEST = Length.inches(0, 3, 8);

    private Enough() {}

    /** What shears in lag screws, two or more so that no board turns; the lightest first. */
    public static Optional<Phrase> across(Joint joint, FixingChecks.Asked asked, Units units) {
        return find(lags(joint), LEAST, each -> new FixingChecks(each, joint, units).holds(asked));
    }

    /** What is pulled out, in screws through a board; the lightest first. */
    public static Optional<Phrase> pulled(Joint joint, FixingChecks.Asked asked, Units units) {
        Length length = onShelf(joint.through().plus(Length.inches(1, 1, 2)));
        List<Fasteners.Sized> screws = Stream.of(10, 12, 14)
                .map(gauge ->
                        new Fasteners.Sized(Fasteners.Kind.WOOD_SCREW, Optional.empty(), Optional.of(gauge), length, 1))
                .toList();
        return find(screws, 1, each -> new FixingChecks(each, joint, units).pulls(asked));
    }

    /** What the trade has at hand for a board so thick, the lightest first. */
    private static List<Fasteners.Sized> lags(Joint joint) {
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

    private static Optional<Phrase> find(
            List<Fasteners.Sized> kinds, int least, Function<Fasteners, Answer<Utilisation>> check) {
        for (Fasteners.Sized kind : kinds) {
            for (int number = least; number <= MOST; number++) {
                Fasteners.Sized all =
                        new Fasteners.Sized(kind.kind(), kind.diameter(), kind.gauge(), kind.length(), number);
                if (check.apply(all).match(Utilisation::isEnough, because -> false)) {
                    return Optional.of(words(all));
                }
            }
        }
        return Optional.empty();
    }

    /** Such as {@code 4 lag screws, 3/8" x 4"}. */
    private static Phrase words(Fasteners.Sized all) {
        Count number = new Count(all.number());
        return all.gauge().isPresent()
                ? Phrase.of(
                        all.number() == 1 ? "{} wood screw no. {}, {} long" : "{} wood screws no. {}, {} long",
                        number,
                        new Count(all.gauge().get()),
                        all.length())
                : Phrase.of("{} lag screws, {} x {}", number, all.diameter().orElseThrow(), all.length());
    }
}
