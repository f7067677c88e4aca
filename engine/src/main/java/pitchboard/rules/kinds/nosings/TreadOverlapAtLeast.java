package pitchboard.rules.kinds.nosings;

import pitchboard.brief.Risers;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Treads without risers between them must overlap, seen from above, by at least this. */
public record TreadOverlapAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "tread-overlap-at-least";
    }

    @Override
    public String subject() {
        return "overlap of open treads";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public TreadOverlapAtLeast withLimit(Quantity value) {
        return new TreadOverlapAtLeast(clause, (Length) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        if (!(stair.brief().risers() instanceof Risers.Open)) {
            return Verdict.doesNotApply("boards close the risers");
        }
        return bound().judge(stair.projection(), Place.EVERY_STEP, () -> remedy(stair));
    }

    private Phrase remedy(Stair stair) {
        return Phrase.of(
                "make the treads {} wide, or the run {}",
                OnTape.noLess(stair, stair.run().plus(least)),
                OnTape.noMore(stair, stair.brief().treads().width().minus(least)));
    }
}
