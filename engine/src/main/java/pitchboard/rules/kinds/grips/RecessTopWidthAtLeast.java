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

/** A handrail with finger recesses must be at least this wide above them. */
public record RecessTopWidthAtLeast(Clause clause, Length least, List<Proviso> provisos) implements Bounded {
    public RecessTopWidthAtLeast {
        provisos = List.copyOf(provisos);
    }

    @Override
    public String id() {
        return "recess-top-width-at-least";
    }

    @Override
    public String subject() {
        return "width above the finger recesses";
    }

    @Override
    public Limit bound() {
        return Limit.atLeast(least);
    }

    @Override
    public RecessTopWidthAtLeast withLimit(Quantity value) {
        return new RecessTopWidthAtLeast(clause, (Length) value, provisos);
    }

    @Override
    public RecessTopWidthAtLeast withProvisos(List<Proviso> others) {
        return new RecessTopWidthAtLeast(clause, least, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        return FingerRecess.judge(stair, provisos, rail -> judge(rail.width()), rail -> judge(rail.topWidth()));
    }

    private Verdict judge(Length width) {
        return bound().judge(width, Rails.RAIL, () -> Phrase.of("use a rail at least {} wide at the top", least));
    }
}
