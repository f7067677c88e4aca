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

/** A door that swings over the landing at an end of the flight must leave this much of it clear, across the flight. */
public record ClearOfDoorAtLeast(End end, Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return end == End.BOTTOM ? "clear-of-door-at-least" : "top-clear-of-door-at-least";
    }

    @Override
    public String subject() {
        return end.landingWords().substring(4) + " clear of the door";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public ClearOfDoorAtLeast withLimit(Quantity value) {
        return new ClearOfDoorAtLeast(end, clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        Landing landing = end.landing(stair.site());
        if (landing.door().isEmpty()) {
            return Verdict.cannotTell(
                    end.fact(Fact.TOP_DOOR, Fact.BOTTOM_DOOR),
                    "say whether a door opens at " + end.landingWords() + ", and how it swings");
        }
        if (landing.door().get() != Landing.Door.SWINGS_OVER_STAIR) {
            return Verdict.doesNotApply("no door swings over " + end.landingWords());
        }
        return landing.clearOfDoor()
                .map(clear -> bound().judge(
                                clear,
                                end.place(),
                                () -> Phrase.of(remedyWords(), OnTape.noLess(stair, least.minus(clear)))))
                .orElseGet(() -> Verdict.cannotTell(
                        end.fact(Fact.CLEAR_OF_TOP_DOOR, Fact.CLEAR_OF_BOTTOM_DOOR),
                        "measure how much of " + end.landingWords() + " the swinging door leaves clear"));
    }

    private String remedyWords() {
        return end == End.BOTTOM
                ? "hang the door the other way, or move the foot by {}"
                : "hang the door the other way, or give the top landing {} more";
    }
}
