package pitchboard.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import pitchboard.app.OpenedRates;
import pitchboard.app.OpenedYard;
import pitchboard.app.Quotes;
import pitchboard.documents.csv.CostCsv;
import pitchboard.documents.json.Json;
import pitchboard.job.Purchase;
import pitchboard.job.Quotation;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.sheet.Sheet;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Draft;
import pitchboard.web.wire.Ask;
import pitchboard.web.wire.Attachment;
import pitchboard.web.wire.Refusal;
import pitchboard.web.wire.Reply;

/** What a job costs and is offered for, from the price list and the rates that are kept here. */
public final class PriceRoutes {
    private static final int UNREADABLE = 400;
    private static final int NOT_YET = 409;

    private final Shelf shelf;
    private final PriceShelf prices;

    public PriceRoutes(Shelf shelf, PriceShelf prices) {
        this.shelf = shelf;
        this.prices = prices;
    }

    public void add(RoutesConfig routes) {
        routes.get("/api/prices", this::kept);
        routes.put("/api/prices/yard", context -> {
            prices.keepYard(Ask.of(context).text("file", Ask.MOST_BYTES));
            kept(context);
        });
        routes.put("/api/prices/rates", context -> {
            prices.keepRates(Ask.of(context).text("file", Ask.MOST_BYTES));
            kept(context);
        });
        routes.get("/api/jobs/{id}/costs", this::costs);
        routes.get("/api/jobs/{id}/quote.pdf", context -> {
            Quotation quotation = quotation(context);
            pdf(context, quotation, quotation.quoteSheets(), " quote");
        });
        routes.get("/api/jobs/{id}/cost.pdf", context -> {
            Quotation quotation = quotation(context);
            pdf(context, quotation, quotation.costSheets(), " cost");
        });
        routes.get("/api/jobs/{id}/cost.csv", this::csv);
    }

    private void kept(Context context) throws FileTrouble {
        Json yard = prices.findYard()
                .map(OpenedYard.Understood::yard)
                .<Json>map(list -> of(list.name(), list.date(), list.currency()))
                .orElseGet(Json::none);
        Json rates = prices.findRates()
                .map(OpenedRates.Understood::rates)
                .<Json>map(own -> of(own.name(), own.date(), own.currency()))
                .orElseGet(Json::none);
        Reply.send(context, Json.object().with("yard", yard).with("rates", rates));
    }

    private static Json of(String name, Day date, Currency currency) {
        return Json.object().says("name", name).says("date", date.toString()).says("currency", currency.code());
    }

    private void costs(Context context) throws Refusal, FileTrouble {
        context.contentType(Reply.JSON).result(Quotes.json(quotation(context)));
    }

    private void csv(Context context) throws Refusal, FileTrouble {
        Draft draft = shelf.newest(context).version().draft();
        byte[] text = CostCsv.write(quotation(context)).getBytes(StandardCharsets.UTF_8);
        Attachment.name(context, "attachment", draft.name() + " cost", ".csv");
        context.contentType("text/csv; charset=utf-8").result(text);
    }

    private Quotation quotation(Context context) throws Refusal, FileTrouble {
        Day on = Optional.ofNullable(context.queryParam("on"))
                .flatMap(Day::find)
                .orElseThrow(() -> new Refusal(
                        UNREADABLE,
                        List.of(new Refusal.Reason(
                                "on", "on: expected a day such as 2027-05-14, as in ?on=2027-05-14"))));
        OpenedYard.Understood yard =
                prices.findYard().orElseThrow(() -> new Refusal(NOT_YET, "there is no price list here yet"));
        OpenedRates.Understood rates =
                prices.findRates().orElseThrow(() -> new Refusal(NOT_YET, "there are no rates here yet"));
        if (!yard.yard().currency().equals(rates.rates().currency())) {
            throw new Refusal(
                    NOT_YET,
                    "the price list is in " + yard.yard().currency().code() + ", the rates in "
                            + rates.rates().currency().code() + "; write both in one currency");
        }
        Draft draft = shelf.newest(context).version().draft();
        Purchase purchase = Purchase.of(List.of(PaperRoutes.designed(draft)), yard.yard(), yard.text());
        return Quotation.of(purchase, rates.rates(), rates.text(), on);
    }

    private void pdf(Context context, Quotation quotation, List<Sheet> sheets, String which)
            throws Refusal, FileTrouble, IOException {
        if (sheets.isEmpty()) {
            throw new Refusal(
                    NOT_YET,
                    quotation.costing().missing().stream()
                            .map(words -> new Refusal.Reason("", "no price, so no quote: " + words))
                            .toList());
        }
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        Quotes.pdf(quotation, sheets, pdf);
        Draft draft = shelf.newest(context).version().draft();
        Attachment.name(context, "inline", draft.name() + which, ".pdf");
        context.contentType("application/pdf").result(pdf.toByteArray());
    }
}
