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

/** No step may be shorter than this, nosing to nosing. */
public record RunAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "run-at-least";
    }

    @Override
    public String subject() {
        return "run of a step";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RunAtLeast withLimit(Quantity value) {
        return new RunAtLeast(clause, (Length) value);
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
        Length run = OnTape.noLess(stair, least);
        return Phrase.of("lengthen the run to {}: the flight then runs {}", run, run.times(stair.treads()));
    }
}
