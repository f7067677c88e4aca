package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Brief;
import pitchboard.buying.need.Need;
import pitchboard.buying.need.Needs;
import pitchboard.buying.order.Buyer;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.search.Planner;
import pitchboard.buying.yard.Yard;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.buying.BuyingPapers;
import pitchboard.sheet.buying.Errand;

/**
 * What is bought for one job, or for several together.
 *
 * @param jobs one or more; with several, the pieces of the first are marked A, those of the second B and so on
 * @param priceList the text the yard was read from
 * @param fingerprint of the jobs and the price list
 */
public record Purchase(List<Outcome.Designed> jobs, BuyingList list, String priceList, Fingerprint fingerprint) {
    private static final int LETTERS = 26;

    public Purchase {
        jobs = List.copyOf(jobs);
    }

    /**
     * Buys for these jobs.
     *
     * @param priceList the text the yard was read from, for the fingerprint
     * @throws IllegalArgumentException without a job, or with more than there are letters
     */
    public static Purchase of(List<Outcome.Designed> jobs, Yard yard, String priceList) {
        if (jobs.isEmpty() || jobs.size() > LETTERS) {
            throw new IllegalArgumentException(jobs.size() + " jobs");
        }
        List<Need> needs = new ArrayList<>();
        StringBuilder inputs = new StringBuilder();
        char next = 'A';
        for (Outcome.Designed job : jobs) {
            String letter = jobs.size() == 1 ? "" : String.valueOf(next++);
            needs.addAll(Needs.of(job.stair(), job.parts(), letter, yard.saw().kerf()));
            inputs.append(job.job().fingerprint().text()).append('\n');
        }
        inputs.append(priceList);
        BuyingList list = Buyer.buy(needs, yard, Planner.USUAL_EFFORT);
        return new Purchase(jobs, list, priceList, Fingerprint.of(inputs.toString()));
    }

    private Brief brief() {
        return jobs.get(0).job().brief();
    }

    /** The papers for the yard and the bench, on the paper and in the units of the first job. */
    public List<Sheet> sheets() {
        return BuyingPapers.draw(new Errand(
                brief().title(),
                brief().tape(),
                brief().paper(),
                jobs.get(0).job().rulebook().edition().shortName(),
                fingerprint.text(),
                list));
    }
}
