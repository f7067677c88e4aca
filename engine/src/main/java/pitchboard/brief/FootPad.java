package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/** What the foot stands on, where that lies on the ground. */
public record FootPad(Optional<Size> size, Optional<Soil> soil) {
    public static final FootPad UNSAID = new FootPad(Optional.empty(), Optional.empty());

    /**
     * A slab of concrete.
     *
     * @param length along the flight
     * @param width across it
     */
    public record Size(Length length, Length width, Length thickness) {}

    /** Kinds of ground as codes tell them apart. */
    public enum Soil {
        CLAY_OR_SILT,
        SAND,
        GRAVEL,
        SEDIMENTARY_ROCK,
        CRYSTALLINE_ROCK
    }
}
