package pitchboard.rules.kinds.landings;

import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The landing at an outer door may slope no more than this. */
public record DoorLandingFallAtMost(Clause clause, Ratio most) implements Bounded {
    @Override
    public String id() {
        return "door-landing-fall-at-most";
    }

    @Override
    public String subject() {
        return "fall of the landing at the outer door";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public DoorLandingFallAtMost withLimit(Quantity value) {
        return new DoorLandingFallAtMost(clause, (Ratio) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Doors.findReasonAgainst(stair)
                .orElseGet(() -> stair.site()
                        .top()
                        .fall()
                        .map(fall -> bound().judge(
                                        fall,
                                        End.TOP.place(),
                                        () -> Phrase.of(
                                                "level the landing at the door until it falls {} at most", most)))
                        .orElseGet(() -> Verdict.cannotTell(
                                Fact.TOP_LANDING_FALL, "measure how much the landing at the door falls")));
    }
}
