package pitchboard.intake.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a page must know of a form to ask for its value.
 *
 * @param kind how it is asked for
 * @param choices the words to choose from; empty when there is more to say than a few words
 * @param instead words that may be written in the place of all else, such as {@code none} or {@code free}
 * @param lead the line of a group whose value may stand for the whole group
 */
public record Shape(Kind kind, List<String> choices, List<String> instead, Optional<String> lead) {
    /** How a value is asked for. */
    public enum Kind {
        WORDS("words"),
        LENGTH("length"),
        GRADUATION("graduation"),
        SLOPE("slope"),
        COUNT("count"),
        LIMIT("limit"),
        CHOICE("choice"),
        GROUP("group"),
        LIST("list");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public Shape {
        choices = List.copyOf(choices);
        instead = List.copyOf(instead);
    }

    static Shape of(Kind kind) {
        return new Shape(kind, List.of(), List.of(), Optional.empty());
    }

    static Shape of(Kind kind, List<String> choices) {
        return new Shape(kind, choices, List.of(), Optional.empty());
    }

    /** Of lines whose names are not known here. */
    public static Shape ofLines() {
        return group(Optional.empty());
    }

    static Shape group(Optional<String> lead) {
        return new Shape(Kind.GROUP, List.of(), List.of(), lead);
    }

    Shape or(String word) {
        List<String> more = new ArrayList<>(List.of(word));
        more.addAll(instead);
        return new Shape(kind, choices, more, lead);
    }
}
