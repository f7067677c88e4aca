package pitchboard.rules.kinds.guards;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Where an open side has no guard, what is beside the flight must lie less than this below the treads. */
public record UnguardedDropLessThan(Clause clause, Length less) implements Bounded {

    @Override
    public String id() {
        return "unguarded-drop-less-than";
    }

    @Override
    public String subject() {
        return "drop beside an open side without a guard";
    }

    @Override
    public Limit bound() {
        return Limit.lessThan(less);
    }

    @Override
    public UnguardedDropLessThan withLimit(Quantity value) {
        return new UnguardedDropLessThan(clause, (Length) value);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Drop.judge(stair, bound(), List.of());
    }
}
