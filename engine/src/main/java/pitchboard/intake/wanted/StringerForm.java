package pitchboard.intake.wanted;

import java.util.List;
import pitchboard.brief.StringerStock;
import pitchboard.brief.Stringers;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.measure.Tape;

/** The stringers and the boards they are cut from. */
final class StringerForm extends GroupForm<Stringers> {
    private static final Key<String> STOCK =
            Key.needed("stock", Forms.words(40, "2x12"), "what the yard calls the boards they are cut from");
    private static final Key<Length> DEPTH =
            Key.needed("depth", Bounds.STRINGER_DEPTH, "of those boards, as it measures, not as it is called");
    private static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.STRINGER_THICKNESS, "of those boards, as it measures");
    static final Key<Integer> COUNT = Key.needed("count", Bounds.STRINGERS, "how many, spread evenly across the width");
    private static final Key<Length> OVERHANG = Key.defaulting(
            "tread overhang",
            Forms.lengthOrNone(Bounds.TREAD_OVERHANG),
            "how far the treads reach past the outer faces of the outer stringers, each side",
            "none",
            units -> Length.ZERO);
    private static final Key<Length> TRIM = Key.defaulting(
            "trim",
            Forms.lengthOrNone(Bounds.TRIM),
            "board length lost at each end to square it and cut off splits",
            "1\" or 25 mm (common practice, no source)",
            units -> units == Tape.Units.INCHES ? Length.inches(1) : Length.mm(25));

    @Override
    public List<Key<?>> keys() {
        return List.of(STOCK, DEPTH, THICKNESS, COUNT, OVERHANG, TRIM);
    }

    @Override
    protected Stringers read(Fields in) {
        StringerStock stock = new StringerStock(in.get(STOCK), in.get(DEPTH), in.get(THICKNESS));
        return new Stringers(stock, in.get(COUNT), in.get(OVERHANG), in.get(TRIM));
    }

    @Override
    protected void write(Stringers value, Lines out) {
        out.put(STOCK, value.stock().name());
        out.put(DEPTH, value.stock().depth());
        out.put(THICKNESS, value.stock().thickness());
        out.put(COUNT, value.count());
        out.put(OVERHANG, value.treadOverhang());
        out.put(TRIM, value.trim());
    }
}
