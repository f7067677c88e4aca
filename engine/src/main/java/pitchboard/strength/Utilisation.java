package pitchboard.strength;

import java.util.List;
import pitchboard.measure.Decimals;
import pitchboard.source.Figure;

/**
 * What a member must bear against what it may.
 *
 * @param what is compared, such as {@code bending}
 * @param governing the load case that asks most of it
 * @param demand with its working
 * @param capacity with its working
 * @param ratio demand over capacity, rounded to a millionth so that every machine says the same
 * @param factors every factor that was looked at, whether it applies or not
 * @param steps what was reckoned on the way, in order
 */
public record Utilisation(
        String what,
        String governing,
        Figure demand,
        Figure capacity,
        double ratio,
        List<Factor> factors,
        List<Figure> steps) {
    public Utilisation {
        factors = List.copyOf(factors);
        steps = List.copyOf(steps);
        ratio = Decimals.rounded(ratio, 6);
    }

    public boolean isEnough() {
        return ratio <= 1;
    }
}
