package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/** How the front edge of every tread is finished; empty when undecided. */
public sealed interface Nosing {
    record Square() implements Nosing {}

    record Rounded(Length radius) implements Nosing {}

    record Bevelled(Length bevel) implements Nosing {}

    /** The edge's size that codes limit; empty for a square edge. */
    default Optional<Length> size() {
        if (this instanceof Rounded rounded) {
            return Optional.of(rounded.radius());
        }
        return this instanceof Bevelled bevelled ? Optional.of(bevelled.bevel()) : Optional.empty();
    }
}
