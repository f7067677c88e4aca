package pitchboard.rules.kinds.rails;

import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** So many sides of the flight must have a handrail. */
public record HandrailSidesAtLeast(Clause clause, Count least) implements Bounded {

    @Override
    public String id() {
        return "handrail-sides-at-least";
    }

    @Override
    public String subject() {
        return "sides with a handrail";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public HandrailSidesAtLeast withLimit(Quantity value) {
        return new HandrailSidesAtLeast(clause, (Count) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        new Count(stair.brief().handrail().sides().count()),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of(remedy()));
    }

    private String remedy() {
        return least.value() > 1 ? "fit a handrail on each side" : "fit a handrail on one side at least";
    }
}
