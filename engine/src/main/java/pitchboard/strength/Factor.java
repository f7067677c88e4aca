package pitchboard.strength;

import java.util.List;
import pitchboard.measure.Reckoned;
import pitchboard.source.Source;

/**
 * One adjustment of a published value, told whether it changes anything or not.
 *
 * @param symbol as the document calls it
 * @param name in plain words
 * @param because why it is what it is, or why it does not apply
 */
public record Factor(String symbol, String name, double value, String because, Source source) {
    /** One that leaves the value as it is. */
    public static Factor idle(String symbol, String name, String because, Source source) {
        return new Factor(symbol, name, 1, because, source);
    }

    public boolean applies() {
        return Math.abs(value - 1) > 1e-9;
    }

    public Reckoned shown() {
        return Reckoned.factor(value);
    }

    static double product(List<Factor> factors) {
        double product = 1;
        for (Factor factor : factors) {
            product *= factor.value();
        }
        return product;
    }
}
