package pitchboard.source;

import java.util.List;
import pitchboard.measure.Quantity;

/**
 * A number with its working, ready to be shown.
 *
 * @param symbol how formulas call it, such as {@code r}
 * @param meaning what it is in plain words, such as {@code rise of every step}
 * @param expression how it was obtained, in symbols, such as {@code H / n}; empty for a given value
 * @param inputs what went in, in the order of the expression
 * @param value what came out
 */
public record Figure(
        String symbol, String meaning, String expression, List<Input> inputs, Quantity value, Source source) {
    /** One quantity that went in. */
    public record Input(String symbol, Quantity value) {}

    public Figure {
        inputs = List.copyOf(inputs);
    }

    /** A value nobody computed: it was measured, asked for or printed. */
    public static Figure given(String symbol, String meaning, Quantity value, Source source) {
        return new Figure(symbol, meaning, "", List.of(), value, source);
    }

    /** A value that follows from others by geometry. */
    public static Figure derived(String symbol, String meaning, String expression, Quantity value, Input... inputs) {
        return new Figure(symbol, meaning, expression, List.of(inputs), value, Practice.GEOMETRY);
    }

    public Input asInput() {
        return new Input(symbol, value);
    }
}
