package pitchboard.site;

import java.util.Optional;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;

/**
 * The level place at one end of the flight; whatever nobody measured stays empty and is asked for by the rules.
 *
 * @param depth clear length in the direction of travel
 * @param width clear width across it
 * @param fall its slope, as drop over distance
 * @param door a door that opens onto this end of the stair
 * @param clearOfDoor level space in the direction of travel that an open or opening door leaves before the steps
 */
public record Landing(
        Optional<Length> depth,
        Optional<Length> width,
        Optional<Ratio> fall,
        Optional<Door> door,
        Optional<Length> clearOfDoor) {
    public static final Landing UNMEASURED =
            new Landing(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** How a door at the end of the flight moves. */
    public enum Door {
        NONE,
        SWINGS_AWAY,
        SWINGS_OVER_STAIR
    }
}
