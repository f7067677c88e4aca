package pitchboard.intake.revision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Written;

/** What lies directly inside a group or a list, by the names that paths have for it. */
final class Pieces {
    private Pieces() {}

    static List<String> names(Written written) {
        return written.match(
                text -> List.of(),
                group -> group.entries().stream().map(Written.Entry::key).toList(),
                sequence -> numbers(sequence.items().size()));
    }

    private static List<String> numbers(int most) {
        List<String> numbers = new ArrayList<>();
        while (numbers.size() < most) {
            numbers.add(Integer.toString(numbers.size() + 1));
        }
        return numbers;
    }

    /** All names in any of them, each once, those of the first one first. */
    static Set<String> names(List<? extends Written> several) {
        Set<String> names = new LinkedHashSet<>();
        several.forEach(each -> names.addAll(names(each)));
        return names;
    }

    static Optional<Written> find(Written written, String name) {
        return written.match(
                text -> Optional.empty(), group -> group.findEntry(name).map(Written.Entry::value), sequence -> {
                    int at = numbers(sequence.items().size()).indexOf(name);
                    return at < 0
                            ? Optional.empty()
                            : Optional.of(sequence.items().get(at));
                });
    }

    /** Whether both can hold pieces under the same kind of name. */
    static boolean areAlike(Written one, Written other) {
        return (one instanceof Written.Group && other instanceof Written.Group)
                || (one instanceof Written.Sequence && other instanceof Written.Sequence);
    }

    /** Of the same kind as the one given, with these pieces. */
    static Written like(Written kind, List<Written.Entry> pieces) {
        return kind instanceof Written.Sequence
                ? new Written.Sequence(
                        Spot.NOWHERE, pieces.stream().map(Written.Entry::value).toList())
                : new Written.Group(Spot.NOWHERE, pieces);
    }
}
