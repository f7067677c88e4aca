package pitchboard.intake;

import java.util.List;
import pitchboard.rules.Amendment;

/**
 * The local changes to one rulebook.
 *
 * @param basedOn the name of the rulebook they change
 */
public record LocalChanges(String basedOn, List<Amendment> amendments) {
    public LocalChanges {
        amendments = List.copyOf(amendments);
    }
}
