package pitchboard.rules.kinds.guards;

import java.util.List;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Reading;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.Bounded;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** Where an open side has no guard, what is beside the flight may lie no deeper than this below the treads. */
public record UnguardedDropAtMost(Clause clause, Length most, List<Proviso> provisos) implements Bounded {
    public UnguardedDropAtMost {
        provisos = List.copyOf(provisos);
    }

    /** By a clause that also says how far beside the flight the drop is looked for. */
    public static UnguardedDropAtMost within(Clause clause, Length zone, Length most) {
        return new UnguardedDropAtMost(clause, most, List.of(Drop.within(clause, zone)));
    }

    @Override
    public String id() {
        return "unguarded-drop-at-most";
    }

    @Override
    public String subject() {
        return "drop beside an open side without a guard";
    }

    @Override
    public Limit bound() {
        return Limit.atMost(most);
    }

    @Override
    public UnguardedDropAtMost withLimit(Quantity value) {
        return new UnguardedDropAtMost(clause, (Length) value, provisos);
    }

    @Override
    public UnguardedDropAtMost withProvisos(List<Proviso> others) {
        return new UnguardedDropAtMost(clause, most, others);
    }

    @Override
    public List<Reading> restsOn() {
        return List.of(Reading.RISE);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Drop.judge(stair, bound(), provisos);
    }
}
