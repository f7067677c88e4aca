package pitchboard.rules.kinds.pairs;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.rules.kinds.OtherRisers;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Twice the rise plus the run may be no less than this. */
public record StepFormulaAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "step-formula-at-least";
    }

    @Override
    public String subject() {
        return "twice the rise plus the run";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public StepFormulaAtLeast withLimit(Quantity value) {
        return new StepFormulaAtLeast(clause, (Length) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(sum(stair), Place.EVERY_STEP, () -> remedy(stair));
    }

    private static Length sum(Stair stair) {
        return stair.rise().times(2).plus(stair.run());
    }

    private Phrase remedy(Stair stair) {
        Length run = OnTape.noLess(stair, least.minus(stair.rise().times(2)));
        Optional<Phrase> risers = OtherRisers.fewer(stair, other -> bound().admits(sum(other)));
        Phrase change = Phrase.of("lengthen the run to {}", run);
        return run.isPositive()
                ? risers.map(other -> change.and(", or ", other)).orElse(change)
                : risers.orElse(change);
    }
}
