package pitchboard.brief;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * Preferences: what is fixed must be met, what is a target only ranks.
 *
 * @param risers the fixed number of risers; empty when free
 * @param run the fixed run of every step; empty when free
 * @param targetRise the rise that would be liked best; empty when none
 * @param targetRun the run that would be liked best; empty when none
 */
public record Wishes(
        Optional<Integer> risers, Optional<Length> run, Optional<Length> targetRise, Optional<Length> targetRun) {
    public static final Wishes NONE =
            new Wishes(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether the number of risers or the run was fixed. */
    public boolean fixesSomething() {
        return risers.isPresent() || run.isPresent();
    }
}
