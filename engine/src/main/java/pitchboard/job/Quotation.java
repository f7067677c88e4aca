package pitchboard.job;

import java.util.ArrayList;
import java.util.List;
import pitchboard.brief.Brief;
import pitchboard.costing.Costing;
import pitchboard.costing.Estimator;
import pitchboard.costing.Rates;
import pitchboard.measure.Tape;
import pitchboard.measure.TapeWriter;
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
        List<Estimator.Built> stairs = purchase.jobs().stream()
                .map(job -> new Estimator.Built(job.stair(), job.parts()))
                .toList();
        Costing costing = Estimator.cost(stairs, purchase.list(), rates, on);
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

    private Offer offer() {
        Brief brief = purchase.jobs().get(0).job().brief();
        return new Offer(
                brief.title(),
                brief.paper(),
                purchase.jobs().get(0).job().rulebook().edition().shortName(),
                fingerprint.text(),
                scope(),
                costing);
    }

    /** What is built, a line for each stair. */
    public List<String> scope() {
        List<String> lines = new ArrayList<>();
        for (Outcome.Designed job : purchase.jobs()) {
            Brief brief = job.job().brief();
            Tape tape = brief.tape();
            lines.add(brief.title().job() + ": a timber stair of "
                    + job.stair().flight().risers() + " risers, each "
                    + TapeWriter.write(job.stair().rise(), tape, Tape.Style.PRINTED) + ", with "
                    + job.stair().treads() + " treads " + TapeWriter.write(brief.width(), tape, Tape.Style.PRINTED)
                    + " wide on " + brief.stringers().count() + " stringers, from "
                    + brief.stringers().stock().name() + ".");
        }
        return lines;
    }
}
