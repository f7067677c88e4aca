package pitchboard.rules.kinds.rails;

import pitchboard.brief.Handrail;
import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A flight without any handrail must have fewer risers than this. */
public record UnrailedRisersLessThan(Clause clause, Count less) implements Bounded {
    @Override
    public String id() {
        return "unrailed-risers-less-than";
    }

    @Override
    public String subject() {
        return "risers without a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnrailedRisersLessThan withLimit(Quantity value) {
        return new UnrailedRisersLessThan(clause, (Count) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        boolean unrailed = stair.brief().handrail().sides() == Handrail.Sides.NONE;
        Count risers = new Count(unrailed ? stair.flight().risers() : 0);
        return bound().judge(risers, Place.WHOLE_FLIGHT, () -> Phrase.of("fit a handrail on one side at least"));
    }
}
