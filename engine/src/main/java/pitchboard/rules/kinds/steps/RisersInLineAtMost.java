package pitchboard.rules.kinds.steps;

import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A flight may have no more risers than this before it must turn. */
public record RisersInLineAtMost(Clause clause, Count most) implements Bounded {
    @Override
    public String id() {
        return "risers-in-line-at-most";
    }

    @Override
    public String subject() {
        return "risers in one line";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RisersInLineAtMost withLimit(Quantity value) {
        return new RisersInLineAtMost(clause, (Count) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        new Count(stair.flight().risers()),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("turn the stair after at most {} risers", most));
    }
}
