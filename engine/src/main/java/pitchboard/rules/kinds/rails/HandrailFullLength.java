package pitchboard.rules.kinds.rails;

import java.util.List;
import pitchboard.measure.Count;
import pitchboard.measure.Phrase;
import pitchboard.rules.Fact;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** A handrail must run past every riser of the flight, with its ends returned or in posts. */
public record HandrailFullLength(Clause clause, List<Proviso> provisos) implements Rule {
    private static final String INTERRUPTION = "handrail-interruption";

    public HandrailFullLength {
        provisos = List.copyOf(provisos);
    }

    /** What may interrupt it, in words. */
    public static Proviso interruptedBy(Clause clause, String what) {
        return Proviso.of(INTERRUPTION, what, clause);
    }

    @Override
    public String id() {
        return "handrail-full-length";
    }

    @Override
    public String subject() {
        return "handrails over the full length";
    }

    @Override
    public HandrailFullLength withProvisos(List<Proviso> others) {
        return new HandrailFullLength(clause, others);
    }

    @Override
    public Verdict judge(Stair stair) {
        return Rails.judge(
                stair,
                rail -> rail.fullLength()
                        .map(full -> judge(rail.sides().count(), full))
                        .orElseGet(() -> Verdict.cannotTell(
                                Fact.RAIL_FULL_LENGTH, "decide from where to where the handrail runs")));
    }

    private Verdict judge(int rails, boolean full) {
        return Limit.atLeast(new Count(rails))
                .judge(new Count(full ? rails : 0), Rails.RAIL, () -> Phrase.of(remedy()));
    }

    private String remedy() {
        String run = "run the handrail from above the lowest riser to above the top one, and return its ends";
        return Proviso.find(provisos, INTERRUPTION)
                .map(proviso -> run + "; only " + proviso.words() + " may interrupt it")
                .orElse(run);
    }
}
