package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Fasteners;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.measure.Reckoned;

/** Fasteners alike at one place of a joint. */
final class FastenersForm extends GroupForm<Fasteners> {
    private enum Kind {
        LAG_SCREW(Fasteners.Kind.LAG_SCREW),
        WOOD_SCREW(Fasteners.Kind.WOOD_SCREW),
        NAIL(Fasteners.Kind.NAIL),
        BOLT(Fasteners.Kind.BOLT),
        RATED(Fasteners.Kind.BOLT);

        private final Fasteners.Kind sized;

        Kind(Fasteners.Kind sized) {
            this.sized = sized;
        }
    }

    private static final ChoiceForm<Kind> KINDS = ChoiceForm.of("lag screws", Kind.LAG_SCREW)
            .or("wood screws", Kind.WOOD_SCREW)
            .or("nails", Kind.NAIL)
            .or("bolts", Kind.BOLT)
            .or("rated", Kind.RATED);
    private static final Key<Kind> KIND = Key.needed(
            "kind", KINDS, "rated: screws, anchors, brackets or straps whose maker states what one may hold");
    private static final Key<Integer> NUMBER =
            Key.needed("number", Bounds.FASTENERS, "how many, at each stringer, board or post");
    private static final Key<Optional<Length>> DIAMETER = Key.open(
            "diameter",
            Bounds.FASTENER_DIAMETER,
            "of the shank of lag screws, nails and bolts",
            "with lag screws, nails or bolts it must be there");
    private static final Key<Optional<Integer>> GAUGE =
            Key.open("gauge", Bounds.SCREW_GAUGE, "the number of a wood screw", "with wood screws it must be there");
    private static final Key<Optional<Length>> LENGTH =
            Key.open("length", Bounds.FASTENER_LENGTH, "under the head", "unless they are rated it must be there");
    private static final Key<Optional<Reckoned>> ALLOWED = Key.open(
            "allowed",
            Forms.loadAtPoint(),
            "what one may hold, as its maker states it for this wood and use",
            "with rated ones it must be there");

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, NUMBER, DIAMETER, GAUGE, LENGTH, ALLOWED);
    }

    @Override
    protected List<Key<?>> shown() {
        return List.of(KIND, NUMBER, DIAMETER, LENGTH);
    }

    @Override
    protected Fasteners read(Fields in) {
        Kind kind = in.get(KIND);
        int number = in.get(NUMBER);
        String with = "with " + (kind == Kind.RATED ? "rated ones" : KINDS.word(kind));
        if (!in.areSound(KIND)) {
            return new Fasteners.Rated(new Reckoned(1, Reckoned.Unit.POUND), 1);
        }
        if (kind == Kind.RATED) {
            in.forbid(DIAMETER, with);
            in.forbid(GAUGE, with);
            in.forbid(LENGTH, with);
            return new Fasteners.Rated(in.demand(ALLOWED, with), number);
        }
        in.forbid(ALLOWED, with);
        boolean byGauge = kind == Kind.WOOD_SCREW;
        in.forbid(byGauge ? DIAMETER : GAUGE, with);
        return new Fasteners.Sized(
                kind.sized,
                byGauge ? Optional.empty() : Optional.of(in.demand(DIAMETER, with)),
                byGauge ? Optional.of(in.demand(GAUGE, with)) : Optional.empty(),
                in.demand(LENGTH, with),
                number);
    }

    @Override
    protected void write(Fasteners value, Lines out) {
        if (value instanceof Fasteners.Sized sized) {
            out.put(KIND, kind(sized.kind()));
            out.put(NUMBER, sized.number());
            out.put(DIAMETER, sized.diameter());
            out.put(GAUGE, sized.gauge());
            out.put(LENGTH, Optional.of(sized.length()));
        } else if (value instanceof Fasteners.Rated rated) {
            out.put(KIND, Kind.RATED);
            out.put(NUMBER, rated.number());
            out.put(ALLOWED, Optional.of(rated.allowed()));
        }
    }

    private static Kind kind(Fasteners.Kind sized) {
        return switch (sized) {
            case LAG_SCREW -> Kind.LAG_SCREW;
            case WOOD_SCREW -> Kind.WOOD_SCREW;
            case NAIL -> Kind.NAIL;
            case BOLT -> Kind.BOLT;
        };
    }
}
