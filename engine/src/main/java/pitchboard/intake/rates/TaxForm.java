package pitchboard.intake.rates;

import java.util.List;
import pitchboard.costing.LineKind;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Ratio;

/** The tax on one kind of line. */
final class TaxForm extends GroupForm<TaxForm.Tax> {
    record Tax(LineKind kind, Ratio rate) {}

    private static final Key<LineKind> ON = Key.needed("on", kinds(), "what is taxed");
    private static final Key<Ratio> RATE =
            Key.needed("rate", Numbers.share(100, "7.25 %"), "of its price, overhead and profit in it");

    private static ChoiceForm<LineKind> kinds() {
        ChoiceForm<LineKind> kinds = ChoiceForm.of(LineKind.LUMBER.words(), LineKind.LUMBER);
        for (LineKind kind : LineKind.values()) {
            kinds = kinds.or(kind.words(), kind);
        }
        return kinds;
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(ON, RATE);
    }

    @Override
    protected Tax read(Fields in) {
        return new Tax(in.get(ON), in.get(RATE));
    }

    @Override
    protected void write(Tax value, Lines out) {
        out.put(ON, value.kind());
        out.put(RATE, value.rate());
    }
}
