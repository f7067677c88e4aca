package pitchboard.carry.joints;

import java.util.List;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.source.Source;
import pitchboard.strength.Factor;
import pitchboard.strength.Force;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;
import pitchboard.strength.fasteners.Capacity;

/** Forces as figures, and comparisons of two of them. */
final class Working {
    static final Source STATICS = Practice.GEOMETRY;

    private Working() {}

    static Figure force(
            String symbol, String meaning, String expression, Force value, Units units, Source source, Figure... from) {
        List<Figure.Input> inputs = List.of(from).stream().map(Figure::asInput).toList();
        return new Figure(symbol, meaning, expression, inputs, units.show(value), source);
    }

    static Utilisation compare(
            String what,
            String governing,
            Figure demand,
            Force demanded,
            Figure capacity,
            Force held,
            List<Factor> factors) {
        return new Utilisation(
                what, governing, demand, capacity, demanded.newtons() / held.newtons(), factors, List.of());
    }

    /** What several fasteners alike hold together. */
    static Figure several(int count, Capacity each, Units units) {
        Figure one = Figure.given(each.symbol() + "′", each.meaning(), units.show(each.value()), each.source());
        String expression = count + " × " + each.symbol() + "′";
        return force(
                "n" + each.symbol() + "′",
                "all of them",
                expression,
                each.value().times(count),
                units,
                each.source(),
                one);
    }
}
