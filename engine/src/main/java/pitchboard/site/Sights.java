package pitchboard.site;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import pitchboard.measure.Found;
import pitchboard.measure.Length;
import pitchboard.measure.Quantity;
import pitchboard.measure.Ratio;

/**
 * What somebody went and looked at; whatever nobody looked at is not in it, and is asked for by the rules.
 *
 * @param seen a {@link Length}, a slope as a {@link Ratio}, or whether it is as it should be, as {@link Sight} says
 */
public record Sights(Map<Sight, Quantity> seen) {
    public static final Sights NONE = new Sights(new EnumMap<>(Sight.class));

    public Sights {
        Map<Sight, Quantity> copy = new EnumMap<>(Sight.class);
        copy.putAll(seen);
        seen = Collections.unmodifiableMap(copy);
    }

    public Optional<Length> length(Sight sight) {
        return find(sight, Length.class);
    }

    public Optional<Ratio> slope(Sight sight) {
        return find(sight, Ratio.class);
    }

    public Optional<Boolean> isSo(Sight sight) {
        return find(sight, Found.class).map(Found.RIGHT::equals);
    }

    private <T extends Quantity> Optional<T> find(Sight sight, Class<T> kind) {
        Quantity found = seen.get(sight);
        return kind.isInstance(found) ? Optional.of(kind.cast(found)) : Optional.empty();
    }
}
