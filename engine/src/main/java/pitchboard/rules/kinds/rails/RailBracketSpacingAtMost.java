package pitchboard.rules.kinds.rails;

import pitchboard.brief.Handrail;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The brackets of a handrail on a wall stand no farther apart than this. */
public record RailBracketSpacingAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "rail-bracket-spacing-at-most";
    }

    @Override
    public String subject() {
        return "distance between the brackets of a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RailBracketSpacingAtMost withLimit(Quantity value) {
        return new RailBracketSpacingAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judge(
                stair,
                rail -> Rails.isBesideWall(stair)
                        ? byBrackets(rail)
                        : Verdict.doesNotApply("no handrail runs along a wall"));
    }

    private Verdict byBrackets(Handrail rail) {
        return rail.brackets()
                .map(apart -> bound().judge(
                                apart, Rails.RAIL, () -> Phrase.of("bring the brackets to {} apart or less", most)))
                .orElseGet(() -> Verdict.cannotTell(Fact.RAIL_BRACKETS, "decide how far apart the brackets are"));
    }
}
