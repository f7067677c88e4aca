package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * The guard along the open edge of the upper floor, on the level. It is built like the guard of the flight.
 *
 * @param height of its top plumb above the finished floor
 * @param railAboveFloor from the finished floor up to the underside of the bottom rail; empty when it is not laid out
 * @param ball that must not pass its infill; empty when it is the same as on the flight
 */
public record EdgeGuard(Length height, Optional<Length> railAboveFloor, Optional<Length> ball) {}
