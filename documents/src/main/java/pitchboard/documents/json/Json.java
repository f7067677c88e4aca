package pitchboard.documents.json;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pitchboard.measure.Decimals;

/** A JSON value in the making. Fields stay in the order they were put. */
public sealed interface Json {
    void writeTo(StringBuilder out);

    default String text() {
        StringBuilder out = new StringBuilder();
        writeTo(out);
        return out.toString();
    }

    static Json words(String words) {
        return new Words(words);
    }

    static Json number(long whole) {
        return new Plain(Long.toString(whole));
    }

    /** At most six places: what lies beyond differs from machine to machine. */
    static Json number(double value) {
        return new Plain(Decimals.trimmed(value, 6));
    }

    static Json truth(boolean value) {
        return new Plain(Boolean.toString(value));
    }

    static Json none() {
        return new Plain("null");
    }

    static <T> Json list(List<T> items, Function<T, Json> json) {
        return new Items(items.stream().map(json).toList());
    }

    static Fields object() {
        return new Fields();
    }

    /** A string. */
    record Words(String words) implements Json {
        @Override
        public void writeTo(StringBuilder out) {
            out.append('"');
            for (int i = 0; i < words.length(); i++) {
                escape(words.charAt(i), out);
            }
            out.append('"');
        }

        private static void escape(char letter, StringBuilder out) {
            if (letter == '"' || letter == '\\') {
                out.append('\\').append(letter);
            } else if (letter < ' ' || letter == 0x2028 || letter == 0x2029) {
                String digits = Integer.toHexString(letter);
                out.append("\\u").append("0".repeat(4 - digits.length())).append(digits);
            } else {
                out.append(letter);
            }
        }
    }

    /** A number, a truth value or nothing, written as it stands. */
    record Plain(String text) implements Json {
        @Override
        public void writeTo(StringBuilder out) {
            out.append(text);
        }
    }

    /** A list. */
    record Items(List<Json> items) implements Json {
        @Override
        public void writeTo(StringBuilder out) {
            out.append('[');
            for (int i = 0; i < items.size(); i++) {
                out.append(i == 0 ? "" : ",");
                items.get(i).writeTo(out);
            }
            out.append(']');
        }
    }

    /** An object. */
    final class Fields implements Json {
        private final List<String> names = new ArrayList<>();
        private final List<Json> values = new ArrayList<>();

        private Fields() {}

        public Fields with(String name, Json value) {
            names.add(name);
            values.add(value);
            return this;
        }

        public Fields says(String name, String value) {
            return with(name, words(value));
        }

        @Override
        public void writeTo(StringBuilder out) {
            out.append('{');
            for (int i = 0; i < names.size(); i++) {
                out.append(i == 0 ? "" : ",");
                words(names.get(i)).writeTo(out);
                out.append(':');
                values.get(i).writeTo(out);
            }
            out.append('}');
        }
    }
}
