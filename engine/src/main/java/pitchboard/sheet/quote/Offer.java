package pitchboard.sheet.quote;

import java.util.List;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.costing.Costing;
import pitchboard.costing.Estimator;

/**
 * Everything the two papers are drawn from.
 *
 * @param stairs what is built
 * @param fingerprint of jobs, price list, rates and day together
 * @param cautions what the crew must know before it hands the quote out: rules that fail, members that do not carry
 */
public record Offer(
        Title title,
        Paper paper,
        String rulebook,
        String fingerprint,
        List<Estimator.Built> stairs,
        Costing costing,
        List<String> cautions) {
    public Offer {
        stairs = List.copyOf(stairs);
        cautions = List.copyOf(cautions);
    }
}
