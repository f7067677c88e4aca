package pitchboard.strength;

import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Figure;
import pitchboard.source.Source;

/**
 * A published value and what it becomes as the member is used.
 *
 * @param symbol of the published value, such as {@code Fb}
 * @param adjusted symbol of the adjusted one, such as {@code Fb′}
 * @param meaning in plain words
 */
public record Resistance(
        String symbol, String adjusted, String meaning, Stress published, List<Factor> factors, Source source) {
    public Resistance {
        factors = List.copyOf(factors);
    }

    /** The adjusted value. */
    public Stress value() {
        return published.times(Factor.product(factors));
    }

    public Resistance with(Factor factor) {
        List<Factor> more = new ArrayList<>(factors);
        more.add(factor);
        return new Resistance(symbol, adjusted, meaning, published, more, source);
    }

    /** With its working: only the factors that change something are named in it. */
    public Figure figure(Units units) {
        List<Figure.Input> inputs = new ArrayList<>();
        inputs.add(new Figure.Input(symbol, units.show(published)));
        StringBuilder expression = new StringBuilder(symbol);
        for (Factor factor : factors) {
            if (factor.applies()) {
                expression.append(" × ").append(factor.symbol());
                inputs.add(new Figure.Input(factor.symbol(), factor.shown()));
            }
        }
        return new Figure(adjusted, meaning, expression.toString(), inputs, units.show(value()), source);
    }
}
