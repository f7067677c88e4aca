package pitchboard.intake.rates;

import java.util.List;
import pitchboard.costing.Extra;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.money.Money;

/** A cost that no rule works out. */
final class ExtraForm extends GroupForm<Extra> {
    private static final Key<String> WHAT =
            Key.needed("what", Forms.words(80, "delivery by the yard"), "what it is for");

    private final Key<Money> cost;

    ExtraForm(Form<Money> money) {
        cost = Key.needed("cost", money, "what it costs the crew");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(WHAT, cost);
    }

    @Override
    protected Extra read(Fields in) {
        return new Extra(in.get(WHAT), in.get(cost));
    }

    @Override
    protected void write(Extra value, Lines out) {
        out.put(WHAT, value.what());
        out.put(cost, value.cost());
    }
}
