package pitchboard.intake.yard;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.BadEnd;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.Price;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Use;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.money.Currency;
import pitchboard.money.Money;

/** One kind of board. */
final class StockForm extends GroupForm<Stock> {
    private static final Length FOOT = Length.feet(1);
    private static final Length METRE = Length.mm(1000);

    private static final Key<String> NAME =
            Key.needed("name", Forms.words(40, "2x12"), "what the yard calls the boards; no other stock is called so");
    private static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.BOARD_THICKNESS, "as it measures, not as it is called");
    private static final Key<Length> WIDTH =
            Key.needed("width", Bounds.BOARD_WIDTH, "as it measures, not as it is called");
    private static final Key<String> SPECIES = words("species", "Douglas fir-larch");
    private static final Key<String> GRADE = words("grade", "No. 2");
    private static final Key<String> TREATMENT = words("treatment", "for ground contact");
    private static final Key<List<Use>> FOR = Key.defaulting(
            "for",
            Forms.list(uses(), 1, Use.values().length),
            "what the boards are meant for, each behind a dash; such boards are taken first for it, and for nothing else",
            "anything of their section",
            units -> List.of());
    private static final Key<Length> OVER = Key.defaulting(
            "over length",
            Forms.lengthOrNone(Bounds.OVER_LENGTH),
            "how much longer a board really is than it is called",
            "none",
            units -> Length.ZERO);

    private static final Key<Length> BAD_END = Key.defaulting(
            "bad end",
            Forms.lengthOrNone(Bounds.END_TRIM),
            "one end of every board that is split or stamped, beyond the end trim; pieces avoid it",
            "none",
            units -> Length.ZERO);
    private static final Key<List<Use>> BAD_END_FOR = Key.defaulting(
            "bad end will do for",
            Forms.list(uses(), 1, Use.values().length),
            "what may be cut from the bad end all the same, each behind a dash; where other pieces come from the same"
                    + " stock, no piece is cut from it",
            "nothing",
            units -> List.of());

    private final Key<Optional<Money>> perFoot;
    private final Key<Optional<Money>> perMetre;
    private final Key<List<BoardLength>> lengths;

    StockForm(Currency currency) {
        perFoot = Key.open(
                "price per foot",
                MoneyForms.amount(currency),
                "for every foot of the length it is called; rounded to the coin for each board",
                "every length has its own price, or none");
        perMetre = Key.open(
                "price per metre",
                MoneyForms.amount(currency),
                "the same for every metre",
                "every length has its own price, or none");
        lengths = Key.needed(
                "lengths", Forms.list(new BoardLengthForm(currency), 1, 60), "the lengths sold, each behind a dash");
    }

    private static Key<String> words(String name, String example) {
        return Key.defaulting(name, Forms.words(60, example), "as the yard tells it", "nothing", units -> "");
    }

    private static ChoiceForm<Use> uses() {
        ChoiceForm<Use> uses = ChoiceForm.of(Use.STRINGERS.words(), Use.STRINGERS);
        for (Use use : Use.values()) {
            uses = uses.or(use.words(), use);
        }
        return uses;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(
                NAME,
                THICKNESS,
                WIDTH,
                SPECIES,
                GRADE,
                TREATMENT,
                FOR,
                OVER,
                BAD_END,
                BAD_END_FOR,
                perFoot,
                perMetre,
                lengths);
    }

    @Override
    protected Stock read(Fields in) {
        List<BoardLength> sold = in.get(lengths);
        if (in.areSound(lengths)
                && new LinkedHashSet<>(sold.stream().map(BoardLength::nominal).toList()).size() < sold.size()) {
            in.refuse(lengths, "each length once");
        }
        return new Stock(
                in.get(NAME),
                in.get(THICKNESS),
                in.get(WIDTH),
                new Stock.Wood(in.get(SPECIES), in.get(GRADE), in.get(TREATMENT)),
                in.get(FOR),
                in.get(OVER),
                new BadEnd(in.get(BAD_END), in.get(BAD_END_FOR)),
                price(in),
                sold);
    }

    private Optional<Price> price(Fields in) {
        Optional<Price> foot = in.get(perFoot).map(money -> new Price.PerLength(money, FOOT));
        Optional<Price> metre = in.get(perMetre).map(money -> new Price.PerLength(money, METRE));
        if (foot.isPresent() && metre.isPresent()) {
            in.refuse(perMetre, "no such line beside a price per foot");
        }
        return foot.or(() -> metre);
    }

    @Override
    protected void write(Stock value, Lines out) {
        out.put(NAME, value.name());
        out.put(THICKNESS, value.thickness());
        out.put(WIDTH, value.width());
        out.put(SPECIES, value.wood().species());
        out.put(GRADE, value.wood().grade());
        out.put(TREATMENT, value.wood().treatment());
        out.put(FOR, value.uses());
        out.put(OVER, value.over());
        out.put(BAD_END, value.bad().length());
        out.put(BAD_END_FOR, value.bad().bears());
        out.put(perFoot, per(value, FOOT));
        out.put(perMetre, per(value, METRE));
        out.put(lengths, value.lengths());
    }

    private static Optional<Money> per(Stock stock, Length length) {
        return stock.price()
                .map(Price.PerLength.class::cast)
                .filter(price -> price.length().equals(length))
                .map(Price.PerLength::money);
    }
}
