package pitchboard.intake.revision;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.written.Written;

/**
 * Two people's changes to one version, brought together line by line. What both changed differently is a conflict and
 * stays as the first of them has it; nothing of either is dropped without one.
 *
 * @param job all changes of the first, and those of the second that are in nobody's way
 * @param taken what came from the second
 */
public record Merge(Written job, List<Conflict> conflicts, Differences taken) {
    public Merge {
        conflicts = List.copyOf(conflicts);
    }

    /** What one place says in all three versions; at most two of them may say nothing there. */
    public record Conflict(
            List<String> path, Optional<Written> base, Optional<Written> mine, Optional<Written> theirs) {
        public Conflict {
            path = List.copyOf(path);
        }

        /** The path as messages show it. */
        public String field() {
            return String.join(" > ", path);
        }
    }

    /** Brings {@code theirs} into {@code mine}, which both started from {@code base}. */
    public static Merge of(Written base, Written mine, Written theirs) {
        Merging merging = Merging.of(base, mine, theirs);
        Differences taken = new Differences(merging.taken());
        return new Merge(taken.applyTo(mine), merging.conflicts(), taken);
    }
}
