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

/** Rise and run together may be no more than this. */
public record RisePlusRunAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "rise-plus-run-at-most";
    }

    @Override
    public String subject() {
        return "rise plus run";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RisePlusRunAtMost withLimit(Quantity value) {
        return new RisePlusRunAtMost(clause, (Length) value);
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
        return stair.rise().plus(stair.run());
    }

    private Phrase remedy(Stair stair) {
        Length run = OnTape.noMore(stair, most.minus(stair.rise()));
        Optional<Phrase> risers = OtherRisers.more(stair, other -> bound().admits(sum(other)));
        Phrase change = Phrase.of("shorten the run to {}", run);
        return run.isPositive()
                ? risers.map(other -> change.and(", or ", other)).orElse(change)
                : risers.orElse(change);
    }
}
