package pitchboard.carry.fixings;

import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.strength.Answer;
import pitchboard.strength.fasteners.Pulled;
import pitchboard.strength.fasteners.Wetness;

/**
 * One place where fasteners hold a piece, loaded across the grain of both members: what is weakest for most of them.
 *
 * @param main specific gravity of what they are driven into
 * @param inMain how deep that is
 * @param grain whether they go into its side or its end
 * @param side specific gravity of what they go through
 * @param through how thick that is
 * @param room plumb height in which they stand one above the other; empty where their places are free
 */
public record Joint(
        Answer<Double> main,
        Length inMain,
        Pulled.Grain grain,
        Answer<Double> side,
        Length through,
        Optional<Length> room,
        Wetness wetness) {
    public boolean isEndGrain() {
        return grain == Pulled.Grain.END;
    }
}
