package pitchboard.rules.kinds.nosings;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Every tread must reach at least this far in front of the riser below it, unless the run is long enough without. */
public record NosingAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    public NosingAtLeast {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return "nosing-at-least";
    }

    @Override
    public String subject() {
        return "nosing of a tread";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public NosingAtLeast withLimit(Quantity value) {
        return new NosingAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public NosingAtLeast withProvisos(List<Proviso> others) {
        return new NosingAtLeast(clause, least, others);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        return Waiver.find(provisos, stair)
                .map(from -> Waiver.because(from, stair))
                .orElseGet(() -> bound().judge(stair.projection(), Place.EVERY_STEP, () -> remedy(stair)));
    }

    private Phrase remedy(Stair stair) {
        return Phrase.of(
                "make the treads {} wide, or the run {}",
                OnTape.noLess(stair, stair.run().plus(least)),
                OnTape.noMore(stair, stair.brief().treads().width().minus(least)));
    }
}
