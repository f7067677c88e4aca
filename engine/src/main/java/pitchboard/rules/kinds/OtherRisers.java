package pitchboard.rules.kinds;

import java.util.Optional;
import java.util.function.Predicate;
import pitchboard.brief.HeadJoin;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.stair.Flight;
import pitchboard.stair.Stair;

/** What another number of risers would make of a stair whose run stays as it is. */
public final class OtherRisers {
    private static final int MOST = 200;

    private OtherRisers() {}

    /** Advice to use the next larger number of risers that fits; empty when none up to 200 does. */
    public static Optional<Phrase> more(Stair stair, Predicate<Stair> fits) {
        for (int risers = stair.flight().risers() + 1; risers <= MOST; risers++) {
            Optional<Stair> other = with(stair, risers).filter(fits);
            if (other.isPresent()) {
                return other.map(OtherRisers::advice);
            }
        }
        return Optional.empty();
    }

    /** Advice to use the next smaller number of risers that fits; empty when none does. */
    public static Optional<Phrase> fewer(Stair stair, Predicate<Stair> fits) {
        for (int risers = stair.flight().risers() - 1; risers > 0; risers--) {
            Optional<Stair> other = with(stair, risers).filter(fits);
            if (other.isPresent()) {
                return other.map(OtherRisers::advice);
            }
        }
        return Optional.empty();
    }

    private static Phrase advice(Stair stair) {
        return Phrase.of(
                "use {} risers: the rise becomes {}", new Count(stair.flight().risers()), stair.rise());
    }

    /** The foot lands elsewhere, and on a slope the flight then climbs more or less. */
    private static Optional<Stair> with(Stair stair, int risers) {
        HeadJoin head = stair.flight().headJoin();
        int treads = head == HeadJoin.FLUSH ? risers : risers - 1;
        Length landing = stair.run().times(treads).plus(stair.riserThickness());
        Length totalRise = stair.site().totalRise(landing);
        if (treads < 1 || !totalRise.isPositive()) {
            return Optional.empty();
        }
        return Optional.of(new Stair(stair.site(), stair.brief(), new Flight(head, risers, totalRise, stair.run())));
    }
}
