package pitchboard.intake.yard;

import java.util.List;
import java.util.Optional;
import pitchboard.buying.yard.BoardLength;
import pitchboard.buying.yard.Price;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.money.Currency;
import pitchboard.money.Money;

/** One length that a stock is sold in; a length alone is short for the group. */
final class BoardLengthForm extends GroupForm<BoardLength> {
    private static final Key<Length> LENGTH = Key.needed("length", Bounds.BOARD_LENGTH, "as it is called and paid for");
    private static final Key<Optional<Integer>> IN_STOCK =
            Key.open("in stock", Forms.count(0, 9999, 6), "how many the yard has", "as many as wanted");

    private final Key<Optional<Money>> price;

    BoardLengthForm(Currency currency) {
        price = Key.open("price", MoneyForms.amount(currency), "of one board of this length", "the price of the stock");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(LENGTH, price, IN_STOCK);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(LENGTH);
    }

    @Override
    protected BoardLength read(Fields in) {
        return new BoardLength(in.get(LENGTH), in.get(price).map(Price.PerBoard::new), in.get(IN_STOCK));
    }

    @Override
    protected void write(BoardLength value, Lines out) {
        out.put(LENGTH, value.nominal());
        out.put(price, value.price().map(each -> ((Price.PerBoard) each).money()));
        out.put(IN_STOCK, value.inStock());
    }
}
