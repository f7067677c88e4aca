package pitchboard.rules.kinds.rails;

import pitchboard.brief.Handrail;
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

/** A flight without handrails on both sides must be narrower than this. */
public record OneRailWidthLessThan(Clause clause, Length less) implements Bounded {
    @Override
    public String id() {
        return "one-rail-width-less-than";
    }

    @Override
    public String subject() {
        return "width without a handrail on both sides";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public OneRailWidthLessThan withLimit(Quantity value) {
        return new OneRailWidthLessThan(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        boolean both = stair.brief().handrail().sides() == Handrail.Sides.BOTH;
        Length width = both ? Length.ZERO : stair.brief().width();
        return bound().judge(
                        width,
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of(
                                "fit a handrail on each side, or make the flight {} wide", OnTape.less(stair, less)));
    }
}
