package pitchboard.rules.kinds.guards;

import pitchboard.brief.Guard;
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

/** The openings in a guard may be no wider than this. */
public record GuardOpeningAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "guard-opening-at-most";
    }

    @Override
    public String subject() {
        return "widest opening in the guard";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public GuardOpeningAtMost withLimit(Quantity value) {
        return new GuardOpeningAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Guards.judge(
                stair,
                Guard::opening,
                Verdict.cannotTell(Fact.GUARD_OPENING, "decide how wide the openings in the guard are"),
                opening -> bound().judge(
                                opening,
                                Guards.GUARD,
                                () -> Phrase.of("leave openings of {} at most", OnTape.noMore(stair, most))));
    }
}
