package pitchboard.rules.kinds.members;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.OnTape;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;

/** The wood left in a stringer under every step must be at least this, square to its edge. */
public record StringerThroatAtLeast(Clause clause, Length least) implements Bounded {

    @Override
    public String id() {
        return "stringer-throat-at-least";
    }

    @Override
    public String subject() {
        return "wood left in the stringer under a step";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public StringerThroatAtLeast withLimit(Quantity value) {
        return new StringerThroatAtLeast(clause, (Length) value);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        Length throat = new StringerShape(stair).throat();
        Length depth = stair.brief().stringers().stock().depth();
        return bound().judge(
                        throat,
                        Place.EVERY_STEP,
                        () -> Phrase.of(
                                "cut the stringers from boards at least {} deep",
                                OnTape.noLess(stair, depth.plus(least.minus(throat)))));
    }
}
