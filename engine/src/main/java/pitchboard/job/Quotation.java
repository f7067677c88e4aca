package pitchboard.job;

import java.util.List;
import pitchboard.afterwards.Afterwards;
import pitchboard.afterwards.Took;
import pitchboard.brief.Brief;
import pitchboard.costing.Costing;
import pitchboard.costing.Estimator;
import pitchboard.costing.Rates;
import pitchboard.money.Day;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.quote.Offer;
import pitchboard.sheet.quote.QuotePapers;

/**
 * What one job, or several together, cost and are offered for.
 *
 * @param fingerprint of jobs, price list, rates and day
 */
public record Quotation(Purchase purchase, Costing costing, Fingerprint fingerprint) {
    /**
     * Costs what is bought.
     *
     * @param ratesText the text the rates were read from, for the fingerprint
     * @param on the day of the quote
     * @throws IllegalArgumentException when price list and rates are in different currencies
     */
    public static Quotation of(Purchase purchase, Rates rates, String ratesText, Day on) {
        Costing costing = Estimator.cost(built(purchase), purchase.list(), rates, on);
        Fingerprint fingerprint = Fingerprint.of(purchase.fingerprint().text() + "\n" + ratesText + "\n" + on);
        return new Quotation(purchase, costing, fingerprint);
    }

    /** For the crew. */
    public List<Sheet> costSheets() {
        return QuotePapers.cost(offer());
    }

    /** For the customer; empty while a price is missing. */
    public List<Sheet> quoteSheets() {
        return QuotePapers.quote(offer());
    }

    /**
     * What the job took against this.
     *
     * @throws IllegalArgumentException when both are in different currencies
     */
    public Afterwards afterwards(Took took) {
        return Afterwards.of(costing, fingerprint.text(), took);
    }

    /** The same on paper, for the crew. */
    public List<Sheet> afterwardsSheets(Afterwards after) {
        return QuotePapers.afterwards(offer(), after);
    }

    private static List<Estimator.Built> built(Purchase purchase) {
        return purchase.jobs().stream()
                .map(job -> new Estimator.Built(job.stair(), job.parts()))
                .toList();
    }

    /** What its papers are drawn from. */
    Offer offer() {
        Brief brief = purchase.jobs().get(0).job().brief();
        return new Offer(
                brief.title(),
                brief.paper(),
                purchase.jobs().get(0).job().rulebook().edition().shortName(),
                fingerprint.text(),
                built(purchase),
                costing,
                cautions());
    }

    /** What the crew must know before it hands the quote out; empty when there is nothing. */
    public List<String> cautions() {
        return purchase.jobs().stream()
                .flatMap(job -> Cautions.of(job).stream())
                .toList();
    }
}
