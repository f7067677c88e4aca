package pitchboard.intake.rates;

import java.util.List;
import pitchboard.afterwards.Took;
import pitchboard.costing.LineKind;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.intake.yard.MoneyForms;
import pitchboard.money.Day;
import pitchboard.money.Money;

/** Money that was spent on one day. */
final class SpentForm extends GroupForm<Took.Spent> {
    private static final Key<Day> DATE = Key.needed("date", MoneyForms.day(), "when");
    private static final Key<LineKind> FOR = Key.needed("for", kinds(), "what kind of cost; labour is hours");
    private static final Key<String> WHAT = Key.needed("what", Forms.words(80, "the yard's bill"), "what was bought");
    private static final Key<String> WHO =
            Key.defaulting("who", Forms.words(60, "the younger one"), "who paid", "nothing", units -> "");

    private final Key<Money> cost;

    SpentForm(Form<Money> money) {
        cost = Key.needed("cost", money, "what was paid for it");
    }

    private static ChoiceForm<LineKind> kinds() {
        return ChoiceForm.of(LineKind.LUMBER.words(), LineKind.LUMBER)
                .or(LineKind.SUNDRIES.words(), LineKind.SUNDRIES)
                .or(LineKind.EXTRAS.words(), LineKind.EXTRAS);
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(DATE, FOR, WHAT, cost, WHO);
    }

    @Override
    protected Took.Spent read(Fields in) {
        return new Took.Spent(in.get(DATE), in.get(FOR), in.get(WHAT), in.get(cost), in.get(WHO));
    }

    @Override
    protected void write(Took.Spent value, Lines out) {
        out.put(DATE, value.day());
        out.put(FOR, value.kind());
        out.put(WHAT, value.what());
        out.put(cost, value.cost());
        out.put(WHO, value.who());
    }
}
