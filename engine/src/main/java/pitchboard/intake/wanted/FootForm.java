package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.FootDetail;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** How the foot of each stringer stands. */
final class FootForm extends GroupForm<FootDetail> {
    private enum Kind {
        ON_SURFACE,
        SOLE_BOARD,
        KICKER
    }

    private static final ChoiceForm<Kind> KINDS = ChoiceForm.of("on the surface", Kind.ON_SURFACE)
            .or("sole board", Kind.SOLE_BOARD)
            .or("kicker", Kind.KICKER);
    private static final Key<Kind> KIND = Key.needed("kind", KINDS, "what each stringer stands on or is held by");
    private static final Key<Optional<Length>> THICKNESS = Key.open(
            "thickness",
            Bounds.BOARD_THICKNESS,
            "of the sole board, which lies flat on the surface",
            "with a sole board it must be there");
    private static final Key<Optional<Length>> WIDTH = Key.open(
            "width", Bounds.BOARD_WIDTH, "of the sole board, along the run", "with a sole board it must be there");
    private static final Key<Optional<Length>> HEIGHT = Key.open(
            "height",
            Bounds.BOARD_THICKNESS,
            "of the kicker above the surface: how far up the toe is notched",
            "with a kicker it must be there");
    private static final Key<Optional<Length>> DEPTH = Key.open(
            "depth",
            Bounds.BOARD_WIDTH,
            "of the kicker, along the run: how far back the toe is notched",
            "with a kicker it must be there");

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, THICKNESS, WIDTH, HEIGHT, DEPTH);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(KIND);
    }

    @Override
    protected FootDetail read(Fields in) {
        Kind kind = in.get(KIND);
        if (!in.areSound(KIND)) {
            return new FootDetail.OnSurface();
        }
        return switch (kind) {
            case SOLE_BOARD -> {
                forbid(in, "with a sole board", HEIGHT, DEPTH);
                yield new FootDetail.SoleBoard(
                        in.demand(THICKNESS, "with a sole board"), in.demand(WIDTH, "with a sole board"));
            }
            case KICKER -> {
                forbid(in, "with a kicker", THICKNESS, WIDTH);
                yield new FootDetail.Kicker(in.demand(HEIGHT, "with a kicker"), in.demand(DEPTH, "with a kicker"));
            }
            case ON_SURFACE -> {
                forbid(in, "for a foot on the surface", THICKNESS, WIDTH, HEIGHT, DEPTH);
                yield new FootDetail.OnSurface();
            }
        };
    }

    private static void forbid(Fields in, String because, Key<?>... keys) {
        for (Key<?> key : keys) {
            in.forbid(key, because);
        }
    }

    @Override
    protected void write(FootDetail value, Lines out) {
        if (value instanceof FootDetail.SoleBoard sole) {
            out.put(KIND, Kind.SOLE_BOARD);
            out.put(THICKNESS, Optional.of(sole.thickness()));
            out.put(WIDTH, Optional.of(sole.width()));
        } else if (value instanceof FootDetail.Kicker kicker) {
            out.put(KIND, Kind.KICKER);
            out.put(HEIGHT, Optional.of(kicker.height()));
            out.put(DEPTH, Optional.of(kicker.depth()));
        } else {
            out.put(KIND, Kind.ON_SURFACE);
        }
    }
}
