package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Handrail.Grip;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The section of a handrail. */
final class GripForm extends GroupForm<Grip> {
    private enum Kind {
        ROUND,
        RECTANGLE,
        RECESSED
    }

    private static final ChoiceForm<Kind> KINDS =
            ChoiceForm.of("round", Kind.ROUND).or("rectangle", Kind.RECTANGLE).or("finger recesses", Kind.RECESSED);
    private static final String NOT_ROUND = "with a rectangle or finger recesses it must be there";
    private static final String RECESSES = "with finger recesses it must be there";

    private static final Key<Kind> KIND = Key.needed("kind", KINDS, "the shape of the section");
    private static final Key<Optional<Length>> DIAMETER =
            Key.open("diameter", Bounds.RAIL_SECTION, "of a round rail", "with a round rail it must be there");
    private static final Key<Optional<Length>> WIDTH =
            Key.open("width", Bounds.RAIL_SECTION, "of a rail with rounded edges, over all", NOT_ROUND);
    private static final Key<Optional<Length>> HEIGHT =
            Key.open("height", Bounds.RAIL_SECTION, "of a rail with rounded edges", NOT_ROUND);
    private static final Key<Optional<Grip.Recess>> RECESS =
            Key.open("recess", new RecessForm(), "where the fingers go, on both sides of the rail", RECESSES);
    private static final Key<Optional<Length>> TOP_WIDTH =
            Key.open("width above recess", Bounds.RAIL_SECTION, "of the rail above its finger recesses", RECESSES);
    private static final Key<Optional<Length>> EDGE =
            Key.open("edge radius", Bounds.NOSING_EDGE, "to which its edges are eased", RECESSES);

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, DIAMETER, WIDTH, HEIGHT, RECESS, TOP_WIDTH, EDGE);
    }

    @Override
    protected List<Key<?>> shown() {
        return List.of(KIND, DIAMETER);
    }

    @Override
    protected Grip read(Fields in) {
        Kind kind = in.get(KIND);
        if (!in.areSound(KIND)) {
            return new Grip.Round(Length.inches(1));
        }
        return switch (kind) {
            case ROUND -> round(in);
            case RECTANGLE -> rectangle(in);
            case RECESSED -> recessed(in);
        };
    }

    private static Grip round(Fields in) {
        forbid(in, "with a round rail", WIDTH, HEIGHT, RECESS, TOP_WIDTH, EDGE);
        return new Grip.Round(in.demand(DIAMETER, "with a round rail"));
    }

    private static Grip rectangle(Fields in) {
        forbid(in, "with a rectangle", DIAMETER, RECESS, TOP_WIDTH, EDGE);
        return sides(in, "with a rectangle");
    }

    private static Grip.Rectangle sides(Fields in, String with) {
        return new Grip.Rectangle(in.demand(WIDTH, with), in.demand(HEIGHT, with));
    }

    private static Grip recessed(Fields in) {
        String with = "with finger recesses";
        forbid(in, with, DIAMETER);
        Grip.Rectangle sides = sides(in, with);
        Grip.Recess recess = in.demand(RECESS, with);
        Length topWidth = in.demand(TOP_WIDTH, with);
        if (in.areSound(WIDTH, HEIGHT, RECESS, TOP_WIDTH)) {
            fit(in, sides, recess, topWidth);
        }
        return new Grip.Recessed(sides, recess, topWidth, in.demand(EDGE, with));
    }

    private static void fit(Fields in, Grip.Rectangle sides, Grip.Recess recess, Length topWidth) {
        if (recess.start().plus(recess.height()).isMoreThan(sides.height())) {
            in.refuse(RECESS, "a recess that begins and ends within the height of the rail");
        }
        if (recess.depth().times(2).isAtLeast(sides.width())) {
            in.refuse(RECESS, "two recesses that leave wood between them");
        }
        if (topWidth.isMoreThan(sides.width())) {
            in.refuse(TOP_WIDTH, "no more than the width of the rail over all");
        }
    }

    private static void forbid(Fields in, String because, Key<?>... keys) {
        for (Key<?> key : keys) {
            in.forbid(key, because);
        }
    }

    @Override
    protected void write(Grip value, Lines out) {
        if (value instanceof Grip.Round round) {
            out.put(KIND, Kind.ROUND);
            out.put(DIAMETER, Optional.of(round.diameter()));
        } else if (value instanceof Grip.Rectangle rectangle) {
            write(Kind.RECTANGLE, rectangle, out);
        } else if (value instanceof Grip.Recessed recessed) {
            write(Kind.RECESSED, recessed.section(), out);
            out.put(RECESS, Optional.of(recessed.recess()));
            out.put(TOP_WIDTH, Optional.of(recessed.topWidth()));
            out.put(EDGE, Optional.of(recessed.edgeRadius()));
        }
    }

    private static void write(Kind kind, Grip.Rectangle sides, Lines out) {
        out.put(KIND, kind);
        out.put(WIDTH, Optional.of(sides.width()));
        out.put(HEIGHT, Optional.of(sides.height()));
    }
}
