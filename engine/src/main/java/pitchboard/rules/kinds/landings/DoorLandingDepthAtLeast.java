package pitchboard.rules.kinds.landings;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The landing at an outer door must be this long in the direction of travel. */
public record DoorLandingDepthAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "door-landing-depth-at-least";
    }

    @Override
    public String subject() {
        return "depth of the landing at the outer door";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public DoorLandingDepthAtLeast withLimit(Quantity value) {
        return new DoorLandingDepthAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Doors.findReasonAgainst(stair)
                .orElseGet(() -> stair.site()
                        .top()
                        .depth()
                        .map(depth -> bound().judge(
                                        depth,
                                        End.TOP.place(),
                                        () -> Phrase.of(
                                                "lengthen the landing at the door by {}",
                                                OnTape.noLess(stair, least.minus(depth)))))
                        .orElseGet(() -> Verdict.cannotTell(
                                Fact.TOP_LANDING_DEPTH,
                                "measure how far the landing at the door goes on in the direction of travel")));
    }
}
