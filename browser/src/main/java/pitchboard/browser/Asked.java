package pitchboard.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Written;

/**
 * A request being read: gives what its lines say and takes note of what is wrong with them. What is missing or not as
 * it should be is noted, and something stands in for it, so that all else is still looked at.
 */
final class Asked {
    private final Written.Group group;
    private final List<Problem> problems = new ArrayList<>();

    Asked(Written.Group group) {
        this.group = group;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    void refuse(Written at, String field, String expected) {
        problems.add(new Problem(at.at(), field, "", expected));
    }

    /** Notes every line that is none of these. */
    void allow(List<String> keys) {
        group.entries().stream()
                .filter(entry -> !keys.contains(entry.key()))
                .forEach(stranger -> refuse(stranger.value(), stranger.key(), "one of " + String.join(", ", keys)));
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
            refuse(group, key, expected);
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
            refuse(findShape(key).orElse(group), key, expected);
        }
        return said.orElse(expected);
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
        List<String> ids = new ArrayList<>();
        if (said.get() instanceof Written.Sequence sequence) {
            sequence.items().forEach(item -> words(item).ifPresent(ids::add));
            if (ids.size() == sequence.items().size()) {
                return new Selection(false, ids);
            }
        }
        refuse(said.get(), key, "\"all\", or a list of the names of " + key);
        return Selection.NONE;
    }
}
