package pitchboard.sheet.quote;

import java.util.List;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.costing.Costing;

/**
 * Everything the two papers are drawn from.
 *
 * @param scope what is built, a line for each stair
 * @param fingerprint of jobs, price list, rates and day together
 */
public record Offer(
        Title title, Paper paper, String rulebook, String fingerprint, List<String> scope, Costing costing) {
    public Offer {
        scope = List.copyOf(scope);
    }
}
