package pitchboard.intake.wanted;

import java.util.List;
import pitchboard.brief.Section;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The section of a rail of the guard. */
final class RailSectionForm extends GroupForm<Section> {
    static final Key<Length> WIDTH = Key.needed("width", Bounds.RAIL_SECTION, "of the rail, across the flight");
    static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.RAIL_SECTION, "of the rail, square to the slope");

    @Override
    public List<Key<?>> keys() {
        return List.of(WIDTH, THICKNESS);
    }

    @Override
    protected Section read(Fields in) {
        return new Section(in.get(THICKNESS), in.get(WIDTH));
    }

    @Override
    protected void write(Section value, Lines out) {
        out.put(WIDTH, value.width());
        out.put(THICKNESS, value.thickness());
    }
}
