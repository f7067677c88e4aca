package pitchboard.strength.fasteners;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.strength.Force;

/**
 * A sheared fastener: what every mode allows, the least of them governs.
 *
 * @param modes every mode that this joint has
 * @param k1 of mode II; likewise the others
 */
public record Lateral(Map<Mode, Force> modes, double k1, double k2, double k3) {
    public Lateral {
        modes = Collections.unmodifiableMap(new EnumMap<>(modes));
    }

    public static Lateral of(Fastener fastener, Member main, Member side, YieldLimit.Shear shear) {
        YieldLimit limit = new YieldLimit(fastener, main, side, shear);
        return new Lateral(limit.modes(), limit.k1(), limit.k2(), limit.k3());
    }

    /** The mode that allows least; of two alike the first. */
    public Mode governing() {
        Mode least = Mode.IV;
        for (Map.Entry<Mode, Force> each : modes.entrySet()) {
            if (each.getValue().newtons() < modes.get(least).newtons()) {
                least = each.getKey();
            }
        }
        return least;
    }

    /** {@code Z}, before any factor. */
    public Capacity capacity() {
        Mode mode = governing();
        return new Capacity(
                "Z", "one fastener in shear", Optional.of(mode), modes.get(mode), List.of(), YieldLimit.SOURCE);
    }
}
