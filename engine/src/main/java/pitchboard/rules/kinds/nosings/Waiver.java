package pitchboard.rules.kinds.nosings;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/** The run from which no nosing is owed. */
public final class Waiver {
    private static final String ID = "nosing-waiver-run";

    private Waiver() {}

    public static Proviso from(Clause clause, Length run) {
        return Proviso.of(ID, "run from which no nosing is owed", clause, Limit.atLeast(run));
    }

    static Optional<Limit> find(List<Proviso> provisos, Stair stair) {
        return Proviso.find(provisos, ID)
                .filter(proviso -> proviso.isMetBy(stair.run()))
                .flatMap(Proviso::limit);
    }

    static Verdict because(Limit from, Stair stair) {
        return Verdict.doesNotApply(
                "no nosing is owed from a run of {} on, and this one is {}", from.value(), stair.run());
    }
}
