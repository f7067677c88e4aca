package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.HeadFixing;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** How the head of each stringer is held to the header. */
final class HeadFixingForm extends GroupForm<HeadFixing> {
    private enum Kind {
        HANGER_BOARD,
        LEDGER,
        METAL_HANGER,
        BOLTS
    }

    private static final ChoiceForm<Kind> KINDS = ChoiceForm.of("bolts", Kind.BOLTS)
            .or("metal hanger", Kind.METAL_HANGER)
            .or("hanger board", Kind.HANGER_BOARD)
            .or("ledger", Kind.LEDGER);
    private static final Key<Kind> KIND = Key.needed("kind", KINDS, "what holds each stringer to the header");
    private static final String WITH_BOARD = "with a hanger board or a ledger it must be there";
    private static final Key<Optional<Length>> THICKNESS =
            Key.open("thickness", Bounds.BOARD_THICKNESS, "of the hanger board or ledger, as it measures", WITH_BOARD);
    private static final Key<Optional<Length>> HEIGHT =
            Key.open("height", Bounds.BOARD_WIDTH, "of the hanger board or ledger, as it measures", WITH_BOARD);

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, THICKNESS, HEIGHT);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(KIND);
    }

    @Override
    protected HeadFixing read(Fields in) {
        Kind kind = in.get(KIND);
        String with = kind == Kind.BOLTS ? "with bolts" : "with a " + KINDS.word(kind);
        if (!in.areSound(KIND)) {
            return new HeadFixing.Bolts();
        }
        if (kind == Kind.METAL_HANGER || kind == Kind.BOLTS) {
            in.forbid(THICKNESS, with);
            in.forbid(HEIGHT, with);
        }
        return switch (kind) {
            case HANGER_BOARD -> new HeadFixing.HangerBoard(in.demand(THICKNESS, with), in.demand(HEIGHT, with));
            case LEDGER -> new HeadFixing.Ledger(in.demand(THICKNESS, with), in.demand(HEIGHT, with));
            case METAL_HANGER -> new HeadFixing.MetalHanger();
            case BOLTS -> new HeadFixing.Bolts();
        };
    }

    @Override
    protected void write(HeadFixing value, Lines out) {
        if (value instanceof HeadFixing.HangerBoard board) {
            write(Kind.HANGER_BOARD, board.thickness(), board.height(), out);
        } else if (value instanceof HeadFixing.Ledger ledger) {
            write(Kind.LEDGER, ledger.thickness(), ledger.height(), out);
        } else {
            out.put(KIND, value instanceof HeadFixing.Bolts ? Kind.BOLTS : Kind.METAL_HANGER);
        }
    }

    private static void write(Kind kind, Length thickness, Length height, Lines out) {
        out.put(KIND, kind);
        out.put(THICKNESS, Optional.of(thickness));
        out.put(HEIGHT, Optional.of(height));
    }
}
