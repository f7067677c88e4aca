package pitchboard.documents.json;

import java.util.Optional;
import pitchboard.costing.CostLine;
import pitchboard.costing.Costing;
import pitchboard.costing.Payment;
import pitchboard.costing.Price;
import pitchboard.costing.Rates;
import pitchboard.costing.Scope;
import pitchboard.costing.Work;
import pitchboard.job.Outcome;
import pitchboard.job.Quotation;
import pitchboard.measure.Decimals;
import pitchboard.measure.Tape;
import pitchboard.money.Money;

/**
 * What a job costs and is offered for: for the crew's own programs, it holds every figure. Amounts and hours are text, so
 * that no program makes doubles of them unasked.
 */
public final class QuoteJson {
    private static final int PLACES = 4;

    private QuoteJson() {}

    public static String write(Quotation quotation) {
        return quotation(quotation).text();
    }

    private static Json quotation(Quotation quotation) {
        Costing costing = quotation.costing();
        Rates rates = costing.rates();
        return Json.object()
                .says("inputs", quotation.fingerprint().text())
                .says("quotedOn", costing.quotedOn().toString())
                .says("validUntil", costing.quotedOn().later(rates.validDays()).toString())
                .says("currency", rates.currency().code())
                .says("yard", quotation.purchase().list().yard().name())
                .says("rates", rates.name())
                .with("jobs", Json.list(quotation.purchase().jobs(), QuoteJson::job))
                .with("complete", Json.truth(costing.isComplete()))
                .with("lookFirst", Json.list(quotation.cautions(), Json::words))
                .with("missing", Json.list(costing.missing(), Json::words))
                .with("stale", Json.list(costing.stale(), Json::words))
                .with("lines", Json.list(costing.lines(), QuoteJson::line))
                .with("hours", Json.list(costing.work(), work -> hours(work, rates)))
                .with("price", costing.price().map(QuoteJson::price).orElseGet(Json::none));
    }

    private static Json job(Outcome.Designed job) {
        return Json.object()
                .says("job", job.job().brief().title().job())
                .with(
                        "scope",
                        Json.list(
                                Scope.of(job.stair(), job.parts(), Tape.Style.PLAIN),
                                item -> Json.object()
                                        .says("topic", item.topic())
                                        .says("words", item.words())));
    }

    private static Json line(CostLine line) {
        return Json.object()
                .says("kind", line.kind().words())
                .says("what", line.what())
                .says("working", line.working())
                .with("cost", money(line.cost()));
    }

    private static Json hours(Work work, Rates rates) {
        return Json.object()
                .says("task", work.task().words())
                .says("times", Decimals.trimmed(work.times(), PLACES))
                .says("each", Decimals.trimmed(rates.hoursOf(work.task()), PLACES))
                .with("fromMemory", Json.truth(rates.isFromMemory(work.task())));
    }

    private static Json price(Price price) {
        return Json.object()
                .says("direct", price.direct().digits())
                .says("overhead", price.overhead().digits())
                .says("profit", price.profit().digits())
                .with("taxes", Json.list(price.taxes(), QuoteJson::tax))
                .says("rounding", price.rounding().digits())
                .says("total", price.total().digits())
                .with("payments", Json.list(price.payments(), QuoteJson::payment));
    }

    private static Json tax(Price.Tax tax) {
        return Json.object()
                .says("kind", tax.kind().words())
                .says("taxed", tax.on().digits())
                .says("amount", tax.amount().digits());
    }

    private static Json payment(Payment payment) {
        return Json.object()
                .says("due", payment.when())
                .says("amount", payment.amount().digits());
    }

    private static Json money(Optional<Money> money) {
        return money.map(Money::digits).map(Json::words).orElseGet(Json::none);
    }
}
