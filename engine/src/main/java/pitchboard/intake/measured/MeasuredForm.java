package pitchboard.intake.measured;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.site.Certainty;
import pitchboard.site.Measured;

/** A length and how sure it is: {@code 8' 9 3/4"}, or {@code { length: 9', sure: estimated }}. */
final class MeasuredForm extends GroupForm<Measured> {
    static final Key<Certainty> SURE = Key.defaulting(
            "sure",
            ChoiceForm.of("measured", Certainty.MEASURED)
                    .or("from drawing", Certainty.FROM_DRAWING)
                    .or("estimated", Certainty.ESTIMATED),
            "how the length was come by; what was not measured has to be before the first cut",
            "measured",
            units -> Certainty.MEASURED);

    private final Key<Length> length;

    MeasuredForm(Form<Length> form) {
        this.length = Key.needed("length", form, "the length itself");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(length, SURE);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(length);
    }

    @Override
    protected Measured read(Fields in) {
        return new Measured(in.get(length), in.get(SURE));
    }

    @Override
    protected void write(Measured value, Lines out) {
        out.put(length, value.value());
        out.put(SURE, value.certainty());
    }
}
