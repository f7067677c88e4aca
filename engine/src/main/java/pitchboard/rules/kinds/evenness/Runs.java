package pitchboard.rules.kinds.evenness;

import java.util.function.Function;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.rules.kinds.FloorEdge;
import pitchboard.stair.Stair;

/** Judges how alike the runs of a flight are. By design only the top one can differ, where the floor's edge does not
 * reach out as far as the treads do. */
final class Runs {
    private Runs() {}

    static Verdict judge(Stair stair, Limit limit, Function<Series, Length> difference) {
        if (!FloorEdge.isStep(stair)) {
            return limit.judge(Length.ZERO, Place.WHOLE_FLIGHT, () -> remedy(stair));
        }
        return FloorEdge.judge(
                stair,
                edge -> limit.judge(difference.apply(Series.runs(stair, edge)), Place.HEAD, () -> remedy(stair)));
    }

    private static Phrase remedy(Stair stair) {
        return Phrase.of(
                "bring the floor's edge to {} past the face of the header, so that it reaches out like the treads",
                FloorEdge.overhangFor(stair, stair.projection()));
    }
}
