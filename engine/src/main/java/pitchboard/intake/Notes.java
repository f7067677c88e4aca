package pitchboard.intake;

import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.site.Site;

/**
 * All that people said about one stair; everything else follows from it.
 *
 * @param rulebook the name of the rulebook that applies
 * @param localChanges where the local changes to it are written, as said in the job file
 */
public record Notes(Site site, Brief brief, String rulebook, Optional<String> localChanges) {}
