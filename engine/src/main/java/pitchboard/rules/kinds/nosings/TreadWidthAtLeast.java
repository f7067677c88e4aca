package pitchboard.rules.kinds.nosings;

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

/** The tread itself must be at least this deep, from its back edge to its nosing. */
public record TreadWidthAtLeast(Clause clause, Length least) implements Bounded {

    @Override
    public String id() {
        return "tread-width-at-least";
    }

    @Override
    public String subject() {
        return "depth of the tread itself";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public TreadWidthAtLeast withLimit(Quantity value) {
        return new TreadWidthAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        stair.brief().treads().width(),
                        Place.EVERY_STEP,
                        () -> Phrase.of("make the treads {} wide", OnTape.noLess(stair, least)));
    }
}
