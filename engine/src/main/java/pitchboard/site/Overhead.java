package pitchboard.site;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * Something above the flight that a head could strike: the edge of the floor opening, a beam, a low roof.
 *
 * @param name what it is, for the sheets
 * @param underside height of its lowest edge above the lower surface that the rise was measured from
 * @param from level distance from the header's face to its nearer edge
 * @param to level distance from the header's face to its farther edge; empty when it goes on past the foot
 */
public record Overhead(String name, Measured underside, Length from, Optional<Length> to) {}
