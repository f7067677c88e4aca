package pitchboard.intake.rates;

import java.util.List;
import pitchboard.costing.Pad;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** A pad that has to be poured. */
final class PadForm extends GroupForm<Pad> {
    private static final Key<Length> LENGTH = Key.needed("length", Bounds.PAD_SIDE, "along the flight");
    private static final Key<Length> WIDTH = Key.needed("width", Bounds.PAD_SIDE, "across it");
    private static final Key<Length> THICKNESS = Key.needed("thickness", Bounds.PAD_THICKNESS, "of the concrete");

    private static final Key<Length> GRAVEL = Key.defaulting(
            "gravel",
            Forms.lengthOrNone(Bounds.PAD_THICKNESS),
            "a bed under it, before it is tamped",
            "none",
            units -> Length.ZERO);

    @Override
    public List<Key<?>> keys() {
        return List.of(LENGTH, WIDTH, THICKNESS, GRAVEL);
    }

    @Override
    protected Pad read(Fields in) {
        return new Pad(in.get(LENGTH), in.get(WIDTH), in.get(THICKNESS), in.get(GRAVEL));
    }

    @Override
    protected void write(Pad value, Lines out) {
        out.put(LENGTH, value.length());
        out.put(WIDTH, value.width());
        out.put(THICKNESS, value.thickness());
        out.put(GRAVEL, value.gravel());
    }
}
