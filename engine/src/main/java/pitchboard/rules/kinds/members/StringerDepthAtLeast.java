package pitchboard.rules.kinds.members;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The boards of the stringers must be at least this deep before they are cut. */
public record StringerDepthAtLeast(Clause clause, Length least) implements Bounded {

    @Override
    public String id() {
        return "stringer-depth-at-least";
    }

    @Override
    public String subject() {
        return "depth of the stringer boards";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public StringerDepthAtLeast withLimit(Quantity value) {
        return new StringerDepthAtLeast(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(
                        stair.brief().stringers().stock().depth(),
                        Place.WHOLE_FLIGHT,
                        () -> Phrase.of("cut the stringers from boards at least {} deep", least));
    }
}
