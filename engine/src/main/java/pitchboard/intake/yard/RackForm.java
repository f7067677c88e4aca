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
    private static final Key<Length> LENGTH = Key.needed(
            "length",
            Bounds.RACK_LENGTH,
            "as it lies there; without the splits and stamps, or with them and a bad end");
    private static final Key<Length> BAD_END = Key.defaulting(
            "bad end",
            Forms.lengthOrNone(Bounds.END_TRIM),
            "how much of one end of it is split or stamped; pieces avoid it as they do that of the stock",
            "none",
            units -> Length.ZERO);
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
        return List.of(STOCK, LENGTH, BAD_END, COUNT, NOTE);
    }

    @Override
    protected RackPiece read(Fields in) {
        Length length = in.get(LENGTH);
        Length bad = in.get(BAD_END);
        if (in.areSound(LENGTH, BAD_END) && !bad.isLessThan(length)) {
            in.refuse(BAD_END, "less than the length of the piece");
        }
        return new RackPiece(in.get(STOCK), length, bad, in.get(COUNT), in.get(NOTE));
    }

    @Override
    protected void write(RackPiece value, Lines out) {
        out.put(STOCK, value.stock());
        out.put(LENGTH, value.length());
        out.put(BAD_END, value.badEnd());
        out.put(COUNT, value.count());
        out.put(NOTE, value.note());
    }
}
