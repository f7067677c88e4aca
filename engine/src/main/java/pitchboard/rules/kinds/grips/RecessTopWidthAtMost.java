package pitchboard.rules.kinds.grips;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.rules.kinds.rails.Rails;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A handrail with finger recesses must be at most this wide above them. */
public record RecessTopWidthAtMost(Clause clause, Length most, List<Proviso> provisos) implements Bounded {
    public RecessTopWidthAtMost {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return "recess-top-width-at-most";
    }

    @Override
    public String subject() {
        return "width above the finger recesses";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public RecessTopWidthAtMost withLimit(Quantity value) {
        return new RecessTopWidthAtMost(clause, (Length) value, provisos);
    }

    @Override
    public RecessTopWidthAtMost withProvisos(List<Proviso> others) {
        return new RecessTopWidthAtMost(clause, most, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        return FingerRecess.judge(stair, provisos, rail -> judge(rail.width()), rail -> judge(rail.topWidth()));
    }

    private Verdict judge(Length width) {
        return bound().judge(width, Rails.RAIL, () -> Phrase.of("use a rail at most {} wide at the top", most));
    }
}
