package pitchboard.rules.kinds.evenness;

import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** All rises of a flight are alike within this, the largest against the smallest. As designed they are exactly alike; what
 * the pencil and the saw make of them is measured when the stair stands. */
public record RiseSpreadAtMost(Clause clause, Length most) implements Bounded {

    @Override
    public String id() {
        return "rise-spread-at-most";
    }

    @Override
    public String subject() {
        return "difference between rises, as designed";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RiseSpreadAtMost withLimit(Quantity value) {
        return new RiseSpreadAtMost(clause, (Length) value);
    }

    @Override
    public Verdict judge(Stair stair) {
        return bound().judge(Series.rises(stair).spread(), Place.WHOLE_FLIGHT, () -> Phrase.of("make all rises alike"));
    }
}
