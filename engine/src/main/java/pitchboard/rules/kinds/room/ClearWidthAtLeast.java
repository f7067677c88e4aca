package pitchboard.rules.kinds.room;

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

/** The flight must be at least this wide where nothing but the handrails reaches in. */
public record ClearWidthAtLeast(Clause clause, Length least) implements Bounded {
    @Override
    public String id() {
        return "clear-width-at-least";
    }

    @Override
    public String subject() {
        return "clear width";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public ClearWidthAtLeast withLimit(Quantity value) {
        return new ClearWidthAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length width = Widths.clear(stair);
        return bound().judge(
                        width,
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("widen the flight by {}", OnTape.noLess(stair, least.minus(width))));
    }
}
