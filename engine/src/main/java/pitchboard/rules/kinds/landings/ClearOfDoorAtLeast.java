package pitchboard.rules.kinds.landings;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.site.Landing;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A door that swings over the bottom landing must leave this much of it clear, across the whole flight. */
public record ClearOfDoorAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "clear-of-door-at-least";
    }

    @Override
    public String subject() {
        return "bottom landing clear of the door";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public ClearOfDoorAtLeast withLimit(Quantity value) {
        return new ClearOfDoorAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        Landing bottom = stair.site().bottom();
        if (bottom.door().isEmpty()) {
            return Verdict.cannotTell(
                    Fact.BOTTOM_DOOR, "say whether a door opens at the foot of the stair, and how it swings");
        }
        if (bottom.door().get() != Landing.Door.SWINGS_OVER_STAIR) {
            return Verdict.doesNotApply("no door swings over the bottom landing");
        }
        return bottom.clearOfDoor()
                .map(clear -> bound().judge(
                                clear,
                                End.BOTTOM.place(),
                                () -> Phrase.of(
                                        "hang the door the other way, or move the foot by {}",
                                        OnTape.noLess(stair, least.minus(clear)))))
                .orElseGet(() -> Verdict.cannotTell(
                        Fact.CLEAR_OF_BOTTOM_DOOR,
                        "measure how much of the bottom landing the swinging door leaves clear"));
    }
}
