package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.TreadMakeUp;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The boards that make a tread. */
final class TreadForm extends GroupForm<TreadMakeUp> {
    private static final Key<Integer> BOARDS =
            Key.needed("boards", Bounds.TREAD_BOARDS, "how many boards, side by side, make one tread");
    private static final Key<Length> WIDTH =
            Key.needed("width", Bounds.TREAD_BOARD_WIDTH, "of each board, as it measures, not as it is called");
    private static final Key<Optional<Length>> GAP = Key.open(
            "gap",
            Forms.lengthOrNone(Bounds.TREAD_GAP),
            "between neighbouring boards",
            "with more than one board it must be there");
    private static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.TREAD_THICKNESS, "of the boards, as it measures");

    @Override
    public List<Key<?>> keys() {
        return List.of(BOARDS, WIDTH, GAP, THICKNESS);
    }

    @Override
    protected TreadMakeUp read(Fields in) {
        int boards = in.get(BOARDS);
        TreadMakeUp treads = new TreadMakeUp(boards, in.get(WIDTH), gap(in, boards), in.get(THICKNESS));
        if (in.areSound(BOARDS, WIDTH, GAP) && !Bounds.TREAD_WIDTH.holds(treads.width())) {
            in.refuse(BOARDS, "boards that together, with their gaps, are " + Bounds.TREAD_WIDTH.words(in.units()));
        }
        return treads;
    }

    private static Length gap(Fields in, int boards) {
        if (boards > 1 && in.areSound(BOARDS)) {
            return in.demand(GAP, "with more than one board");
        }
        Length gap = in.get(GAP).orElse(Length.ZERO);
        if (!gap.isZero() && in.areSound(BOARDS)) {
            in.refuse(GAP, "no gap where a tread is one board");
        }
        return Length.ZERO;
    }

    @Override
    protected void write(TreadMakeUp value, Lines out) {
        out.put(BOARDS, value.boards());
        out.put(WIDTH, value.boardWidth());
        out.put(GAP, value.boards() > 1 ? Optional.of(value.gap()) : Optional.empty());
        out.put(THICKNESS, value.thickness());
    }
}
