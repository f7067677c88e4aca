package pitchboard.intake.revision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pitchboard.intake.written.Written;

/**
 * All that differs between two versions, in the order of the first and then of the second. What only one of them has is
 * one difference, whatever is inside it. Lists are held against each other item by item, by position.
 */
public record Differences(List<Difference> all) {
    public Differences {
        all = List.copyOf(all);
    }

    public static Differences between(Written before, Written after) {
        return between(Optional.of(before), Optional.of(after));
    }

    static Differences between(Optional<Written> before, Optional<Written> after) {
        List<Difference> all = new ArrayList<>();
        collect(List.of(), before, after, all);
        return new Differences(all);
    }

    private static void collect(
            List<String> path, Optional<Written> before, Optional<Written> after, List<Difference> all) {
        if (before.isPresent() && after.isPresent() && Pieces.areAlike(before.get(), after.get())) {
            for (String name : Pieces.names(List.of(before.get(), after.get()))) {
                collect(
                        Difference.deeper(path, name),
                        Pieces.find(before.get(), name),
                        Pieces.find(after.get(), name),
                        all);
            }
        } else if (!before.map(Written::anywhere).equals(after.map(Written::anywhere))) {
            all.add(new Difference(path, before, after));
        }
    }

    /** Whether both versions say the same, in whatever order their lines stand. */
    public boolean isNone() {
        return all.isEmpty();
    }

    /**
     * The second version, made from the first. Lines that are new come last in their group.
     *
     * @throws IllegalArgumentException for a tree that does not have the places that differ
     */
    public Written applyTo(Written before) {
        return applied(Optional.of(before), all).orElseThrow();
    }

    private static Optional<Written> applied(Optional<Written> before, List<Difference> below) {
        if (below.isEmpty()) {
            return before;
        }
        if (below.get(0).path().isEmpty()) {
            return below.get(0).after();
        }
        Written whole = before.filter(written -> !(written instanceof Written.Text))
                .orElseThrow(() -> new IllegalArgumentException(
                        "nothing can differ inside, at " + below.get(0).field()));
        List<Written.Entry> pieces = new ArrayList<>();
        for (String name : names(whole, below)) {
            List<Difference> inside = below.stream()
                    .filter(each -> each.path().get(0).equals(name))
                    .map(Difference::inside)
                    .toList();
            applied(Pieces.find(whole, name), inside).ifPresent(piece -> pieces.add(new Written.Entry(name, piece)));
        }
        return Optional.of(Pieces.like(whole, pieces));
    }

    private static Set<String> names(Written whole, List<Difference> below) {
        Set<String> names = new LinkedHashSet<>(Pieces.names(whole));
        below.forEach(each -> names.add(each.path().get(0)));
        return names;
    }
}
