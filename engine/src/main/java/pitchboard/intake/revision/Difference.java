package pitchboard.intake.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Written;

/**
 * One place where two versions differ. At least one of them has something there.
 *
 * @param path the names that lead there, outermost first; items of a list by number from 1
 */
public record Difference(List<String> path, Optional<Written> before, Optional<Written> after) {
    public Difference {
        path = List.copyOf(path);
    }

    /** The path as messages show it: {@code measured > overhead > 1 > underside}. */
    public String field() {
        return String.join(" > ", path);
    }

    /** The same difference, seen from one name farther in. */
    Difference inside() {
        return new Difference(path.subList(1, path.size()), before, after);
    }

    static List<String> deeper(List<String> path, String name) {
        List<String> deeper = new ArrayList<>(path);
        deeper.add(name);
        return deeper;
    }
}
