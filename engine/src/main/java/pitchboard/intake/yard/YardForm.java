package pitchboard.intake.yard;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pitchboard.buying.yard.RackPiece;
import pitchboard.buying.yard.Saw;
import pitchboard.buying.yard.Splicing;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Use;
import pitchboard.buying.yard.Yard;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Day;

/** A whole price list with the rack. */
final class YardForm extends GroupForm<Yard> {
    private static final Key<String> YARD =
            Key.needed("yard", Forms.words(80, "Harbour Street Timber"), "whose prices these are");
    private static final Key<String> GIVEN_BY = Key.defaulting(
            "given by", Forms.words(80, "the counter, by telephone"), "who gave the prices", "nothing", units -> "");
    private static final Key<Day> DATE = Key.needed("date", MoneyForms.day(), "when the prices were given");
    static final Key<Currency> CURRENCY =
            Key.needed("currency", MoneyForms.currency(), "what all prices of the list are counted in");
    private static final Key<Tape.Units> UNITS = Key.needed(
            "units",
            ChoiceForm.of("inches", Tape.Units.INCHES).or("millimetres", Tape.Units.MILLIMETRES),
            "what a number without a unit counts");
    private static final Key<Length> KERF =
            Key.needed("kerf", Forms.lengthOrNone(Bounds.KERF), "the wood that one cut of the saw turns to dust");
    private static final Key<Length> END_TRIM = Key.defaulting(
            "end trim",
            Forms.lengthOrNone(Bounds.END_TRIM),
            "cut off both ends of every board, to square them and be rid of splits and stamps; the cut is in it",
            "none",
            units -> Length.ZERO);
    private static final Key<Length> KEEP_FROM = Key.defaulting(
            "keep from",
            Bounds.KEEP_FROM,
            "a piece left over goes on the rack when it is at least so long",
            "12\" or 300 mm (common practice, no source)",
            units -> units == Tape.Units.INCHES ? Length.inches(12) : Length.mm(300));
    private static final Key<List<RackPiece>> RACK = Key.defaulting(
            "rack",
            Forms.list(new RackForm(), 1, 400),
            "the crew's own pieces, free and already paid for, each behind a dash",
            "nothing on the rack",
            units -> List.of());

    private static final Key<List<Use>> SPLICE = Key.defaulting(
            "splice",
            Forms.list(
                    ChoiceForm.of(Use.RISERS.words(), Use.RISERS)
                            .or(Use.FOOT.words(), Use.FOOT)
                            .or(Use.RAILS.words(), Use.RAILS)
                            .or(Use.HANDRAIL.words(), Use.HANDRAIL),
                    1,
                    4),
            "pieces that may be made of several boards, end to end, each behind a dash; only where no board is long enough,"
                    + " with every joint over a stringer, post or bracket (common practice, no source)",
            "every piece comes from one board, as stringers, treads, posts and head boards always do",
            units -> List.of());
    private static final Key<Length> LAP = Key.defaulting(
            "splice lap",
            Forms.lengthOrNone(Bounds.END_TRIM),
            "how far two boards reach past each other at a joint, half of it to either side",
            "none: they butt",
            units -> Length.ZERO);

    private final Key<List<Stock>> stock;

    /** @param currency of the list, read before anything else, so that an amount in another can be refused in its place */
    YardForm(Currency currency) {
        stock = Key.needed(
                "stock", Forms.list(new StockForm(currency), 1, 200), "the kinds of board, each behind a dash");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(YARD, GIVEN_BY, DATE, CURRENCY, UNITS, KERF, END_TRIM, KEEP_FROM, SPLICE, LAP, stock, RACK);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a price list: lines such as `yard: Harbour Street Timber`, and the groups `stock:` and `rack:`";
    }

    @Override
    protected Yard read(Fields lines) {
        Tape.Units units = lines.get(UNITS);
        Fields in = lines.areSound(UNITS) ? lines.in(units) : lines;
        List<Stock> stocks = in.get(stock);
        List<RackPiece> rack = in.get(RACK);
        Set<String> names = new LinkedHashSet<>(stocks.stream().map(Stock::name).toList());
        if (in.areSound(stock) && names.size() < stocks.size()) {
            in.refuse(stock, "each name of a stock once");
        }
        if (in.areSound(stock, RACK)
                && !names.containsAll(rack.stream().map(RackPiece::stock).toList())) {
            in.refuse(RACK, "pieces of a stock that is named above: " + String.join(", ", names));
        }
        return new Yard(
                in.get(YARD),
                in.get(GIVEN_BY),
                in.get(DATE),
                in.get(CURRENCY),
                units,
                new Saw(in.get(KERF), in.get(END_TRIM), in.get(KEEP_FROM)),
                new Splicing(in.get(SPLICE), in.get(LAP)),
                stocks,
                rack);
    }

    @Override
    protected void write(Yard value, Lines out) {
        out.put(YARD, value.name());
        out.put(GIVEN_BY, value.givenBy());
        out.put(DATE, value.date());
        out.put(CURRENCY, value.currency());
        out.put(UNITS, value.units());
        out.put(KERF, value.saw().kerf());
        out.put(END_TRIM, value.saw().endTrim());
        out.put(KEEP_FROM, value.saw().keepFrom());
        out.put(SPLICE, value.splicing().uses());
        out.put(LAP, value.splicing().lap());
        out.put(stock, value.stocks());
        out.put(RACK, value.rack());
    }
}
