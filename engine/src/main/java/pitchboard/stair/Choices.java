package pitchboard.stair;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The answer to "which stair?".
 *
 * @param allowed everything that rulebook, space and wood allow and that meets the fixed wishes, best first
 * @param otherwiseAllowed allowed too, but not with the number of risers or the run that was fixed; best first
 * @param nearMisses the candidates with the least against them, one for each set of objections, nearest first
 * @param chosen the best allowed one; when risers or run were fixed and nothing with them is allowed, the least bad
 *     one that can be built at all; empty when no stair fits
 */
public record Choices(
        List<Option> allowed, List<Option> otherwiseAllowed, List<Option> nearMisses, Optional<Option> chosen) {
    public Choices {
        allowed = List.copyOf(allowed);
        otherwiseAllowed = List.copyOf(otherwiseAllowed);
        nearMisses = List.copyOf(nearMisses);
    }

    /** The best run for each number of risers, best number first. */
    public List<Option> bestOfEachCount() {
        Map<Integer, Option> best = new LinkedHashMap<>();
        for (Option option : allowed) {
            best.putIfAbsent(option.stair().flight().risers(), option);
        }
        return List.copyOf(best.values());
    }

    /** All allowed runs for this number of risers, shortest first. */
    public List<Option> withRisers(int risers) {
        return allowed.stream()
                .filter(option -> option.stair().flight().risers() == risers)
                .sorted((a, b) -> a.stair().run().compareTo(b.stair().run()))
                .toList();
    }
}
