package pitchboard.intake;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.site.Site;

/**
 * All that people said about one stair; everything else follows from it.
 *
 * @param rulebook the name of the rulebook that applies
 * @param localChanges where local changes to it are written, as said in the job file
 * @param localLimits the local changes that the job itself holds
 */
public record Notes(
        Site site, Brief brief, String rulebook, Optional<String> localChanges, List<LocalChanges.Change> localLimits) {
    public Notes {
        localLimits = List.copyOf(localLimits);
    }

    /** The same, with the rulebook as it is printed but for what a file may say. */
    public static Notes of(Site site, Brief brief, String rulebook, Optional<String> localChanges) {
        return new Notes(site, brief, rulebook, localChanges, List.of());
    }
}
