package pitchboard.rules.kinds.rails;

import pitchboard.brief.Handrail;
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

/** Between a handrail and the wall beside it a hand needs at least this much. */
public record HandrailClearanceAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "handrail-clearance-at-least";
    }

    @Override
    public String subject() {
        return "space between handrail and wall";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public HandrailClearanceAtLeast withLimit(Quantity value) {
        return new HandrailClearanceAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judge(
                stair,
                rail -> Rails.isBesideWall(stair)
                        ? judge(stair, rail)
                        : Verdict.doesNotApply("no handrail runs along a wall"));
    }

    private Verdict judge(Stair stair, Handrail rail) {
        return rail.clearance()
                .map(space -> bound().judge(
                                space,
                                Rails.RAIL,
                                () -> Phrase.of(
                                        "move the handrail off the wall by {}",
                                        OnTape.noLess(stair, least.minus(space)))))
                .orElseGet(
                        () -> Verdict.cannotTell(Fact.RAIL_TO_WALL, "decide how far the handrail stands off the wall"));
    }
}
