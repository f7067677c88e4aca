package pitchboard.site;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Length;

/**
 * Everything measured on site.
 *
 * @param rise between the surfaces that are there now
 * @param upperFinish thickness still to come on the upper surface
 * @param lowerFinish thickness still to come where the foot stands
 * @param runAvailable level space from the header's face outward that the flight may take; empty when free
 * @param overheads what is above the flight; empty when nothing is, see {@code overheadChecked}
 * @param overheadChecked whether somebody looked up: without it an empty list proves no headroom; whoever
 *     measured something did
 * @param leftSide seen by someone climbing
 * @param setting indoors or out
 * @param lit whether there is or will be a light at the stair, and a switch for it; empty when nobody said
 * @param fallBeside how much lower than under the flight the lowest floor or ground within 36 in (one metre) beside it
 *     lies; zero when it goes on level, empty when nobody looked
 * @param edgeAbove how much of the upper floor's edge beside the flight is open; empty when nobody measured
 * @param sights what somebody went and looked at
 */
public record Site(
        Rise rise,
        Length upperFinish,
        Length lowerFinish,
        Optional<Measured> runAvailable,
        List<Overhead> overheads,
        boolean overheadChecked,
        HeadSupport head,
        FootSurface foot,
        Side leftSide,
        Side rightSide,
        Setting setting,
        Landing top,
        Landing bottom,
        Optional<Boolean> lit,
        Optional<Length> fallBeside,
        Optional<EdgeAbove> edgeAbove,
        Sights sights) {
    public Site {
        overheads = List.copyOf(overheads);
        overheadChecked = overheadChecked || !overheads.isEmpty();
    }

    /** Where the stair is. */
    public enum Setting {
        INDOORS,
        OUTDOORS
    }

    /** Total rise between the finished surfaces when the foot lands this far, level, from the header's face. */
    public Length totalRise(Length distanceFromHead) {
        return rise.at(distanceFromHead).plus(upperFinish).minus(lowerFinish);
    }
}
