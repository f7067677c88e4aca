package pitchboard.rules.kinds.pairs;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Area;
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

/** The rise times the run may be no less than this. */
public record RiseTimesRunAtLeast(Clause clause, Area least) implements Bounded {

    @Override
    public String id() {
        return "rise-times-run-at-least";
    }

    @Override
    public String subject() {
        return "rise times run";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RiseTimesRunAtLeast withLimit(Quantity value) {
        return new RiseTimesRunAtLeast(clause, (Area) value);
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
        return bound().judge(product(stair), Place.EVERY_STEP, () -> remedy(stair));
    }

    private static Area product(Stair stair) {
        return Area.of(stair.rise(), stair.run());
    }

    private Phrase remedy(Stair stair) {
        Length run = OnTape.noLess(
                stair, Length.inches(least.squareInches().dividedBy(stair.rise().inInches())));
        Optional<Phrase> risers = OtherRisers.fewer(stair, other -> bound().admits(product(other)));
        Phrase change = Phrase.of("lengthen the run to {}", run);
        return run.isPositive()
                ? risers.map(other -> change.and(", or ", other)).orElse(change)
                : risers.orElse(change);
    }
}
