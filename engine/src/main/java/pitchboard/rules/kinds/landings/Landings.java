package pitchboard.rules.kinds.landings;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/** Judges one measure of a landing. */
final class Landings {
    private Landings() {}

    /**
     * What is measured and good passes at once; only then is it asked whether anything is owed at all.
     *
     * @param open what to measure while nobody did
     */
    static <Q extends Quantity> Verdict judge(
            End end,
            Stair stair,
            List<Proviso> provisos,
            Limit limit,
            Optional<Q> measured,
            Verdict open,
            Function<Q, Phrase> remedy) {
        if (measured.filter(limit::admits).isPresent()) {
            return new Verdict.Pass(measured.get(), limit);
        }
        return Waivers.find(stair, provisos)
                .orElseGet(() -> measured.map(value -> limit.judge(value, end.place(), () -> remedy.apply(value)))
                        .orElse(open));
    }
}
