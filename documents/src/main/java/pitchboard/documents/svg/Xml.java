package pitchboard.documents.svg;

import java.util.ArrayDeque;
import java.util.Deque;
import pitchboard.documents.Decimals;

/** Builds well-formed XML: elements close in the order they were opened, and all words are escaped. */
final class Xml {
    private final StringBuilder text = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private boolean inTag;

    Xml open(String element) {
        endTag();
        text.append('<').append(element);
        open.push(element);
        inTag = true;
        return this;
    }

    Xml close() {
        String element = open.pop();
        if (inTag) {
            text.append("/>");
            inTag = false;
        } else {
            text.append("</").append(element).append('>');
        }
        return this;
    }

    Xml attribute(String name, String value) {
        text.append(' ').append(name).append("=\"");
        escape(value);
        text.append('"');
        return this;
    }

    Xml attribute(String name, double value) {
        return attribute(name, value, "");
    }

    Xml attribute(String name, double value, String unit) {
        return attribute(name, Decimals.of(value) + unit);
    }

    Xml attribute(String name, double left, double top, double width, double height) {
        return attribute(
                name,
                Decimals.of(left) + " " + Decimals.of(top) + " " + Decimals.of(width) + " " + Decimals.of(height));
    }

    Xml words(String words) {
        endTag();
        escape(words);
        return this;
    }

    Xml element(String name, String words) {
        return open(name).words(words).close();
    }

    private void endTag() {
        if (inTag) {
            text.append('>');
            inTag = false;
        }
    }

    private void escape(String words) {
        for (int i = 0; i < words.length(); i++) {
            char letter = words.charAt(i);
            switch (letter) {
                case '&' -> text.append("&amp;");
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '"' -> text.append("&quot;");
                default -> text.append(letter);
            }
        }
    }

    String text() {
        return text.toString();
    }
}
