package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Nosing;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** How the front edge of every tread is finished. */
final class NosingForm extends GroupForm<Nosing> {
    private enum Kind {
        SQUARE,
        ROUNDED,
        BEVELLED
    }

    private static final ChoiceForm<Kind> KINDS =
            ChoiceForm.of("square", Kind.SQUARE).or("rounded", Kind.ROUNDED).or("bevelled", Kind.BEVELLED);
    private static final Key<Kind> KIND = Key.needed("kind", KINDS, "the shape of the front edge");
    private static final Key<Optional<Length>> RADIUS =
            Key.open("radius", Bounds.NOSING_EDGE, "of a rounded edge", "with a rounded edge it must be there");
    private static final Key<Optional<Length>> BEVEL = Key.open(
            "bevel", Bounds.NOSING_EDGE, "how much is taken off the edge", "with a bevelled edge it must be there");

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, RADIUS, BEVEL);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(KIND);
    }

    @Override
    protected Nosing read(Fields in) {
        Kind kind = in.get(KIND);
        if (!in.areSound(KIND)) {
            return new Nosing.Square();
        }
        String with = "with a " + KINDS.word(kind) + " edge";
        if (kind != Kind.ROUNDED) {
            in.forbid(RADIUS, with);
        }
        if (kind != Kind.BEVELLED) {
            in.forbid(BEVEL, with);
        }
        return switch (kind) {
            case SQUARE -> new Nosing.Square();
            case ROUNDED -> new Nosing.Rounded(in.demand(RADIUS, with));
            case BEVELLED -> new Nosing.Bevelled(in.demand(BEVEL, with));
        };
    }

    @Override
    protected void write(Nosing value, Lines out) {
        if (value instanceof Nosing.Rounded rounded) {
            out.put(KIND, Kind.ROUNDED);
            out.put(RADIUS, Optional.of(rounded.radius()));
        } else if (value instanceof Nosing.Bevelled bevelled) {
            out.put(KIND, Kind.BEVELLED);
            out.put(BEVEL, Optional.of(bevelled.bevel()));
        } else {
            out.put(KIND, Kind.SQUARE);
        }
    }
}
