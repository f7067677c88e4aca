package pitchboard.rules.kinds.landings;

import java.util.Optional;
import pitchboard.rules.Fact;
import pitchboard.rules.Verdict;
import pitchboard.site.Landing;
import pitchboard.site.Site;
import pitchboard.stair.Stair;

/** What the rules about the landing at an outer door have in common. */
public final class Doors {
    private Doors() {}

    /** Why no outer door is at the top, or that nobody said; empty when one is. */
    public static Optional<Verdict> findReasonAgainst(Stair stair) {
        if (stair.site().setting() == Site.Setting.INDOORS) {
            return Optional.of(Verdict.doesNotApply("the stair is indoors"));
        }
        Optional<Landing.Door> door = stair.site().top().door();
        if (door.isEmpty()) {
            return Optional.of(Verdict.cannotTell(Fact.TOP_DOOR, "say whether a door opens at the top of the stair"));
        }
        return door.get() == Landing.Door.NONE
                ? Optional.of(Verdict.doesNotApply("no door opens at the top"))
                : Optional.empty();
    }
}
