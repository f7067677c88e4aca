package pitchboard.rules.kinds.steps;

import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.site.Site;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A longer run that is asked of steps outdoors, where they are part of the building. Whether they are is for the
 * authority to say, so a shorter run is a question, not a failure. */
public record OutdoorRunAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "outdoor-run-at-least";
    }

    @Override
    public String subject() {
        return "run of a step outdoors";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public OutdoorRunAtLeast withLimit(Quantity value) {
        return new OutdoorRunAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        if (stair.site().setting() == Site.Setting.INDOORS) {
            return Verdict.doesNotApply("the stair is indoors");
        }
        return bound().admits(stair.run())
                ? new Verdict.Pass(stair.run(), bound())
                : Verdict.cannotTell(
                        "ask whether these steps count as part of the building: then the run must be {}, not {}",
                        least,
                        stair.run());
    }
}
