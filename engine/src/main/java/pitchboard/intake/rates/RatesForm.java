package pitchboard.intake.rates;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.costing.Extra;
import pitchboard.costing.LineKind;
import pitchboard.costing.Pack;
import pitchboard.costing.Pad;
import pitchboard.costing.Rates;
import pitchboard.costing.Stage;
import pitchboard.costing.Task;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.intake.yard.MoneyForms;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;

/** A whole file of rates. */
final class RatesForm extends GroupForm<Rates> {
    private static final Key<String> RATES =
            Key.needed("rates", Forms.words(80, "Two of us, 2027"), "what these rates are called");
    private static final Key<Day> DATE = Key.needed("date", MoneyForms.day(), "when they were set");
    static final Key<Currency> CURRENCY =
            Key.needed("currency", MoneyForms.currency(), "what all amounts are counted in; the price list's, too");
    private static final Key<Tape.Units> UNITS = Key.needed(
            "units",
            ChoiceForm.of("inches", Tape.Units.INCHES).or("millimetres", Tape.Units.MILLIMETRES),
            "what a length without a unit counts");
    private static final Key<Integer> PEOPLE =
            Key.needed("people", Forms.count(1, 20, 2), "who work together; each is paid for every hour of the crew");
    private static final Key<List<HoursForm.Hours>> HOURS = Key.defaulting(
            "hours",
            Forms.list(new HoursForm(), 1, 60),
            "the crew's own planning figures, each behind a dash",
            "figures from memory, which the papers say",
            units -> List.of());
    private static final Key<Ratio> WASTE = Key.needed(
            "waste",
            Numbers.share(100, "10 %"),
            "more screws, adhesive and concrete than is counted, before whole packs");
    private static final Key<Integer> COATS = Key.defaulting(
            "coats", Forms.count(0, 9, 2), "how often every piece is painted, oiled or stained", "0", units -> 0);
    private static final Key<Optional<Pad>> PAD =
            Key.open("pad", new PadForm(), "a pad of concrete to be poured for this job", "none");
    private static final Key<Ratio> OVERHEAD = Key.needed(
            "overhead", Numbers.share(300, "12 %"), "on all cost: truck, tools, insurance, the hours unpaid");
    private static final Key<Ratio> PROFIT =
            Key.needed("profit", Numbers.share(300, "10 %"), "on cost and overhead together");
    private static final Key<List<TaxForm.Tax>> TAXES = Key.defaulting(
            "taxes",
            Forms.list(new TaxForm(), 1, 8),
            "what the customer pays on top, by kind of line, each behind a dash; ask who knows the law",
            "none",
            units -> List.of());
    private static final Key<Ratio> DEPOSIT =
            Key.defaulting("deposit", Numbers.share(100, "30 %"), "due with the order", "none", units -> Ratio.ZERO);
    private static final Key<List<Stage>> STAGES = Key.defaulting(
            "stages",
            Forms.list(new StageForm(), 1, 8),
            "payments on the way, each behind a dash; what they leave is due at the end",
            "none",
            units -> List.of());
    private static final Key<Integer> VALID_DAYS =
            Key.defaulting("valid days", Forms.count(1, 365, 30), "how long an offer holds", "30", units -> 30);
    private static final Key<Integer> STALE_DAYS = Key.defaulting(
            "stale days", Forms.count(1, 3650, 60), "prices older than this are flagged", "60", units -> 60);
    private static final Key<List<String>> FROM = Key.defaulting(
            "from",
            Forms.list(Forms.words(60, "Two of us, carpenters"), 1, 6),
            "who makes the offer, at the head of the quote: name, address, telephone; each behind a dash",
            "an empty line to write it on",
            units -> List.of());
    private static final Key<List<String>> TERMS = sentences("terms", "Work is done on weekdays.");
    private static final Key<List<String>> EXCLUSIONS = sentences("exclusions", "Painting and staining.");

    private final Key<Money> hour;
    private final Key<List<Pack>> packs;
    private final Key<List<Extra>> extras;
    private final Key<Money> roundTo;

    /** @param currency read before anything else, so that an amount in another can be refused in its place */
    RatesForm(Currency currency) {
        Form<Money> money = MoneyForms.amount(currency);
        hour = Key.needed("hour", money, "what an hour of one of them costs");
        packs = Key.defaulting(
                "packs",
                Forms.list(new PackForm(money), 1, 200),
                "screws, bolts, hangers, adhesive, concrete, gravel and finish as they are sold, each behind a dash",
                "nothing has a price, and no quote is complete",
                units -> List.of());
        extras = Key.defaulting(
                "extras",
                Forms.list(new ExtraForm(money), 1, 60),
                "what no rule works out: delivery, a permit, hire; each behind a dash",
                "none",
                units -> List.of());
        roundTo = Key.defaulting(
                "round up to",
                money,
                "the price is rounded up to a multiple of it",
                "the coin",
                units -> Money.ofCoins(1, currency));
    }

    private static Key<List<String>> sentences(String name, String example) {
        return Key.defaulting(
                name,
                Forms.list(Forms.words(200, example), 1, 20),
                "printed on the quote, each behind a dash",
                "none",
                units -> List.of());
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(
                RATES,
                DATE,
                CURRENCY,
                UNITS,
                PEOPLE,
                hour,
                HOURS,
                WASTE,
                packs,
                PAD,
                COATS,
                extras,
                OVERHEAD,
                PROFIT,
                TAXES,
                roundTo,
                DEPOSIT,
                STAGES,
                VALID_DAYS,
                STALE_DAYS,
                FROM,
                TERMS,
                EXCLUSIONS);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a file of rates: lines such as `rates: Two of us, 2027`, `people: 2` and `hour: 46.00`";
    }

    @Override
    protected Rates read(Fields lines) {
        Tape.Units units = lines.get(UNITS);
        Fields in = lines.areSound(UNITS) ? lines.in(units) : lines;
        Ratio deposit = in.get(DEPOSIT);
        List<Stage> stages = in.get(STAGES);
        Ratio early = stages.stream().map(Stage::share).reduce(deposit, Ratio::plus);
        if (in.areSound(DEPOSIT, STAGES) && early.compareTo(Ratio.ONE) > 0) {
            in.refuse(STAGES, "stages that with the deposit are at most 100 %");
        }
        Money step = in.get(roundTo);
        if (in.areSound(roundTo) && !step.equals(step.toCoin())) {
            in.refuse(roundTo, "whole coins");
        }
        return new Rates(
                in.get(RATES),
                in.get(DATE),
                in.get(CURRENCY),
                in.get(PEOPLE),
                in.get(hour),
                hours(in),
                in.get(WASTE),
                in.get(packs),
                in.get(PAD),
                in.get(COATS),
                in.get(extras),
                in.get(OVERHEAD),
                in.get(PROFIT),
                taxes(in),
                step,
                deposit,
                stages,
                in.get(VALID_DAYS),
                in.get(STALE_DAYS),
                new Rates.Wording(in.get(FROM), in.get(TERMS), in.get(EXCLUSIONS)));
    }

    private static Map<Task, Ratio> hours(Fields in) {
        Map<Task, Ratio> hours = new EnumMap<>(Task.class);
        List<HoursForm.Hours> said = in.get(HOURS);
        said.forEach(each -> hours.put(each.task(), each.each()));
        if (in.areSound(HOURS) && hours.size() < said.size()) {
            in.refuse(HOURS, "each task once");
        }
        return hours;
    }

    private static Map<LineKind, Ratio> taxes(Fields in) {
        Map<LineKind, Ratio> taxes = new EnumMap<>(LineKind.class);
        List<TaxForm.Tax> said = in.get(TAXES);
        said.forEach(each -> taxes.put(each.kind(), each.rate()));
        if (in.areSound(TAXES) && taxes.size() < said.size()) {
            in.refuse(TAXES, "each kind once");
        }
        return taxes;
    }

    @Override
    protected void write(Rates value, Lines out) {
        out.put(RATES, value.name());
        out.put(DATE, value.date());
        out.put(CURRENCY, value.currency());
        out.put(UNITS, Tape.Units.INCHES);
        out.put(PEOPLE, value.people());
        out.put(hour, value.hour());
        out.put(
                HOURS,
                value.hours().entrySet().stream()
                        .map(each -> new HoursForm.Hours(each.getKey(), each.getValue()))
                        .toList());
        out.put(WASTE, value.waste());
        out.put(packs, value.packs());
        out.put(PAD, value.pad());
        out.put(COATS, value.coats());
        out.put(extras, value.extras());
        out.put(OVERHEAD, value.overhead());
        out.put(PROFIT, value.profit());
        out.put(
                TAXES,
                value.taxes().entrySet().stream()
                        .map(each -> new TaxForm.Tax(each.getKey(), each.getValue()))
                        .toList());
        out.put(roundTo, value.roundTo());
        out.put(DEPOSIT, value.deposit());
        out.put(STAGES, value.stages());
        out.put(VALID_DAYS, value.validDays());
        out.put(STALE_DAYS, value.staleDays());
        out.put(FROM, value.wording().from());
        out.put(TERMS, value.wording().terms());
        out.put(EXCLUSIONS, value.wording().exclusions());
    }
}
