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

/** No tread may reach farther than this in front of the riser below it. Where the run is long enough to do without a
 * nosing, a longer one is a question, not a failure. */
public record NosingAtMost(Clause clause, Length most, List<Proviso> provisos) implements Bounded {
    public NosingAtMost {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return "nosing-at-most";
    }

    @Override
    public String subject() {
        return "nosing of a tread";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public NosingAtMost withLimit(Quantity value) {
        return new NosingAtMost(clause, (Length) value, provisos);
    }

    @Override
    public NosingAtMost withProvisos(List<Proviso> others) {
        return new NosingAtMost(clause, most, others);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        if (bound().admits(stair.projection())) {
            return new Verdict.Pass(stair.projection(), bound());
        }
        return Waiver.find(provisos, stair)
                .map(from -> Verdict.cannotTell(
                        "ask whether a nosing of {}, over {}, is accepted where none is owed",
                        stair.projection(),
                        most))
                .orElseGet(() -> bound().judge(stair.projection(), Place.EVERY_STEP, () -> remedy(stair)));
    }

    private Phrase remedy(Stair stair) {
        return Phrase.of(
                "make the treads {} wide, or the run {}",
                OnTape.noMore(stair, stair.run().plus(most)),
                OnTape.noLess(stair, stair.brief().treads().width().minus(most)));
    }
}
