package pitchboard.rules.kinds.steps;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** No step may be longer than this, nosing to nosing. */
public record RunAtMost(Clause clause, Length most) implements Bounded {
    @Override
    public String id() {
        return "run-at-most";
    }

    @Override
    public String subject() {
        return "run of a step";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RunAtMost withLimit(Quantity value) {
        return new RunAtMost(clause, (Length) value);
    }

    @Override
    public boolean shapesTheFlight() {
        return true;
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(stair.run(), Place.EVERY_STEP, () -> remedy(stair));
    }

    private Phrase remedy(Stair stair) {
        Length run = OnTape.noMore(stair, most);
        return Phrase.of("shorten the run to {}: the flight then runs {}", run, run.times(stair.treads()));
    }
}
