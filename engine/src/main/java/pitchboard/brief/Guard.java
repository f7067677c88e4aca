package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * The guard on the open sides of the flight.
 *
 * @param height top plumb above the line of the nosings; empty when undecided
 * @param opening widest gap in the infill; empty when undecided
 * @param triangle widest ball that passes the triangle of tread, riser and bottom rail; empty when undecided
 * @param build what it is built of; empty when undecided, and then opening and triangle are taken as stated
 * @param edge the guard along the edge of the upper floor; empty when none is wanted there
 */
public record Guard(
        boolean wanted,
        Optional<Length> height,
        Optional<Length> opening,
        Optional<Length> triangle,
        Optional<GuardBuild> build,
        Optional<EdgeGuard> edge) {}
