package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Handrail;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The section of a handrail. */
final class GripForm extends GroupForm<Handrail.Grip> {
    private static final Key<Boolean> KIND =
            Key.needed("kind", ChoiceForm.of("round", true).or("rectangle", false), "the shape of the section");
    private static final Key<Optional<Length>> DIAMETER =
            Key.open("diameter", Bounds.RAIL_SECTION, "of a round rail", "with a round rail it must be there");
    private static final Key<Optional<Length>> WIDTH =
            Key.open("width", Bounds.RAIL_SECTION, "of a rail with rounded edges", "with a rectangle it must be there");
    private static final Key<Optional<Length>> HEIGHT = Key.open(
            "height", Bounds.RAIL_SECTION, "of a rail with rounded edges", "with a rectangle it must be there");

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, DIAMETER, WIDTH, HEIGHT);
    }

    @Override
    protected List<Key<?>> shown() {
        return List.of(KIND, DIAMETER);
    }

    @Override
    protected Handrail.Grip read(Fields in) {
        boolean round = in.get(KIND);
        if (!in.areSound(KIND)) {
            return new Handrail.Grip.Round(Length.inches(1));
        }
        if (round) {
            in.forbid(WIDTH, "with a round rail");
            in.forbid(HEIGHT, "with a round rail");
            return new Handrail.Grip.Round(in.demand(DIAMETER, "with a round rail"));
        }
        in.forbid(DIAMETER, "with a rectangle");
        return new Handrail.Grip.Rectangle(in.demand(WIDTH, "with a rectangle"), in.demand(HEIGHT, "with a rectangle"));
    }

    @Override
    protected void write(Handrail.Grip value, Lines out) {
        if (value instanceof Handrail.Grip.Round round) {
            out.put(KIND, true);
            out.put(DIAMETER, Optional.of(round.diameter()));
        } else if (value instanceof Handrail.Grip.Rectangle rectangle) {
            out.put(KIND, false);
            out.put(WIDTH, Optional.of(rectangle.width()));
            out.put(HEIGHT, Optional.of(rectangle.height()));
        }
    }
}
