package pitchboard.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.JobText;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Written;
import pitchboard.measure.Tape;

/**
 * A request being read: gives what its lines say and takes note of what is wrong with them. What is missing or not as
 * it should be is noted, and something stands in for it, so that all else is still looked at.
 */
final class Asked {
    static final String UNITS = "inches or millimetres";

    private final Written.Group group;
    private final List<Problem> problems = new ArrayList<>();

    Asked(Written.Group group) {
        this.group = group;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** Says that a line is not there. */
    private void miss(String field, String expected) {
        problems.add(new Problem(group.at(), field, "", expected));
    }

    /** Says something against a line, or that it is not there. */
    void refuse(String field, String expected) {
        findShape(field).ifPresentOrElse(said -> refuse(said, field, expected), () -> miss(field, expected));
    }

    private void refuse(Written said, String field, String expected) {
        problems.add(new Problem(said.at(), field, shown(said), expected));
    }

    static String shown(Written said) {
        return said.match(Written.Text::value, lines -> "a group of lines", list -> "a list");
    }

    /** Notes every line that is none of these. */
    void allow(List<String> keys) {
        group.entries().stream()
                .filter(entry -> !keys.contains(entry.key()))
                .forEach(stranger -> problems.add(new Problem(
                        stranger.at(), stranger.key(), stranger.key(), "one of " + String.join(", ", keys))));
    }

    Optional<Written> findShape(String key) {
        return group.findEntry(key).map(Written.Entry::value);
    }

    Optional<String> findWords(String key) {
        return findShape(key).flatMap(Asked::words);
    }

    private static Optional<String> words(Written written) {
        return written instanceof Written.Text text ? Optional.of(text.value()) : Optional.empty();
    }

    /** What stands there, whatever its shape. */
    Written shape(String key, String expected) {
        Optional<Written> said = findShape(key);
        if (said.isEmpty()) {
            miss(key, expected);
        }
        return said.orElse(group);
    }

    /** A group of lines, such as a job. */
    Written.Group lines(String key, String expected) {
        Written said = shape(key, expected);
        if (said instanceof Written.Group lines) {
            return lines;
        }
        refuse(said, key, expected);
        return group;
    }

    String words(String key, String expected) {
        Optional<String> said = findWords(key);
        if (said.isEmpty()) {
            refuse(key, expected);
        }
        return said.orElse(expected);
    }

    /** {@code "yes"}, or not there at all. */
    boolean yes(String key) {
        Optional<Written> said = findShape(key);
        boolean yes = said.flatMap(Asked::words).equals(Optional.of("yes"));
        if (said.isPresent() && !yes) {
            refuse(key, "\"yes\", or no such line");
        }
        return yes;
    }

    /** What bare numbers count. */
    Tape.Units units() {
        Optional<Tape.Units> units = JobText.findUnits(group);
        if (units.isEmpty()) {
            refuse("units", UNITS);
        }
        return units.orElse(Tape.Units.INCHES);
    }

    /** {@code "all"}, or the names in a list; none when the line is not there. */
    Selection selection(String key) {
        Optional<Written> said = findShape(key);
        if (said.isEmpty()) {
            return Selection.NONE;
        }
        if (words(said.get()).equals(Optional.of("all"))) {
            return new Selection(true, List.of());
        }
        Optional<List<String>> names = items(said.get());
        if (names.isPresent()) {
            return new Selection(false, names.get());
        }
        refuse(said.get(), key, "\"all\", or a list of the names of " + key);
        return Selection.NONE;
    }

    /** One text after the other; empty when it is no list, or not of texts. */
    private static Optional<List<String>> items(Written said) {
        List<String> texts = new ArrayList<>();
        if (said instanceof Written.Sequence sequence) {
            sequence.items().forEach(item -> words(item).ifPresent(texts::add));
            return Optional.of(texts)
                    .filter(all -> all.size() == sequence.items().size());
        }
        return Optional.empty();
    }

    /** A list of texts that must be there. */
    List<String> list(String key, String expected) {
        Optional<List<String>> texts = findShape(key).flatMap(Asked::items);
        if (texts.isEmpty()) {
            refuse(key, expected);
        }
        return texts.orElse(List.of());
    }
}
