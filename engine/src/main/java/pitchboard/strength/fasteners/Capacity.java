package pitchboard.strength.fasteners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.source.Source;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;

/**
 * A published value for one fastener and what it becomes as it is used.
 *
 * @param symbol of the published value: {@code Z}, {@code W} or {@code WH}
 * @param meaning in plain words
 * @param mode how a sheared fastener yields; absent for one that is pulled
 * @param published before any factor
 * @param factors every factor that was looked at, whether it applies or not
 */
public record Capacity(
        String symbol, String meaning, Optional<Mode> mode, Force published, List<Factor> factors, Source source) {
    public Capacity {
        factors = List.copyOf(factors);
    }

    /** With every factor. */
    public Force value() {
        double product = 1;
        for (Factor factor : factors) {
            product *= factor.value();
        }
        return published.times(product);
    }

    public Capacity with(Factor... more) {
        List<Factor> all = new ArrayList<>(factors);
        all.addAll(List.of(more));
        return new Capacity(symbol, meaning, mode, published, all, source);
    }
}
