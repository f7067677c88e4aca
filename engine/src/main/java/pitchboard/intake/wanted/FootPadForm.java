package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.FootPad;
import pitchboard.brief.FootPad.Soil;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** What the foot stands on, and on what ground that lies. */
final class FootPadForm extends GroupForm<FootPad> {
    private static final String TOGETHER = "nobody said; length, width and thickness go together";
    private static final Key<Optional<Length>> LENGTH =
            Key.open("length", Bounds.PAD_SIDE, "of the concrete, along the flight", TOGETHER);
    private static final Key<Optional<Length>> WIDTH =
            Key.open("width", Bounds.PAD_SIDE, "of the concrete, across the flight", TOGETHER);
    private static final Key<Optional<Length>> THICKNESS =
            Key.open("thickness", Bounds.PAD_THICKNESS, "of the concrete", TOGETHER);
    private static final Key<Optional<Soil>> SOIL = Key.open(
            "soil",
            ChoiceForm.of("clay or silt", Soil.CLAY_OR_SILT)
                    .or("sand", Soil.SAND)
                    .or("gravel", Soil.GRAVEL)
                    .or("sedimentary rock", Soil.SEDIMENTARY_ROCK)
                    .or("crystalline rock", Soil.CRYSTALLINE_ROCK),
            "the ground below, as the building office or a look into the hole tells it",
            "clay or silt, which carries least");

    @Override
    public List<Key<?>> keys() {
        return List.of(LENGTH, WIDTH, THICKNESS, SOIL);
    }

    @Override
    protected FootPad read(Fields in) {
        if (!in.says(LENGTH) && !in.says(WIDTH) && !in.says(THICKNESS)) {
            return new FootPad(Optional.empty(), in.get(SOIL));
        }
        String rest = "beside the other sizes of the pad";
        FootPad.Size size =
                new FootPad.Size(in.demand(LENGTH, rest), in.demand(WIDTH, rest), in.demand(THICKNESS, rest));
        return new FootPad(Optional.of(size), in.get(SOIL));
    }

    @Override
    protected void write(FootPad value, Lines out) {
        out.put(LENGTH, value.size().map(FootPad.Size::length));
        out.put(WIDTH, value.size().map(FootPad.Size::width));
        out.put(THICKNESS, value.size().map(FootPad.Size::thickness));
        out.put(SOIL, value.soil());
    }
}
