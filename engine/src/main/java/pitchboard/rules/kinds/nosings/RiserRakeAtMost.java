package pitchboard.rules.kinds.nosings;

import pitchboard.brief.Risers;
import pitchboard.measure.Angle;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Risers may lean back under the nosing by no more than this. Riser boards here stand plumb. */
public record RiserRakeAtMost(Clause clause, Angle most) implements Bounded {
    @Override
    public String id() {
        return "riser-rake-at-most";
    }

    @Override
    public String subject() {
        return "rake of the risers, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RiserRakeAtMost withLimit(Quantity value) {
        return new RiserRakeAtMost(clause, (Angle) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return stair.brief().risers() instanceof Risers.Open
                ? Verdict.doesNotApply("the risers are open")
                : bound().judge(Angle.degrees(0), Place.EVERY_STEP, () -> Phrase.of("set the riser boards plumb"));
    }
}
