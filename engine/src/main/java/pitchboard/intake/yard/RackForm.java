package pitchboard.intake.yard;

import java.util.List;
import pitchboard.buying.yard.RackPiece;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** Pieces alike on the rack. */
final class RackForm extends GroupForm<RackPiece> {
    private static final Key<String> STOCK =
            Key.needed("stock", Forms.words(40, "2x12"), "the name of the stock above that it was cut from");
    private static final Key<Length> LENGTH =
            Key.needed("length", Bounds.RACK_LENGTH, "the sound part, without splits and stamps");
    private static final Key<Integer> COUNT =
            Key.defaulting("count", Forms.count(1, 999, 2), "how many alike", "1", units -> 1);
    private static final Key<String> NOTE = Key.defaulting(
            "note",
            Forms.words(60, "behind the door"),
            "where it lies or what is written on it",
            "nothing",
            units -> "");

    @Override
    public List<Key<?>> keys() {
        return List.of(STOCK, LENGTH, COUNT, NOTE);
    }

    @Override
    protected RackPiece read(Fields in) {
        return new RackPiece(in.get(STOCK), in.get(LENGTH), in.get(COUNT), in.get(NOTE));
    }

    @Override
    protected void write(RackPiece value, Lines out) {
        out.put(STOCK, value.stock());
        out.put(LENGTH, value.length());
        out.put(COUNT, value.count());
        out.put(NOTE, value.note());
    }
}
