package pitchboard.intake.wanted;

import java.util.List;
import pitchboard.brief.GuardBuild.BottomRail;
import pitchboard.brief.Section;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The rail under the infill of the guard. */
final class BottomRailForm extends GroupForm<BottomRail> {
    private static final Key<Length> ABOVE = Key.needed(
            "above nosings",
            Forms.lengthOrNone(Bounds.ABOVE_NOSINGS),
            "from the line of the nosings plumb up to its underside");

    @Override
    public List<Key<?>> keys() {
        return List.of(RailSectionForm.WIDTH, RailSectionForm.THICKNESS, ABOVE);
    }

    @Override
    protected BottomRail read(Fields in) {
        Section section = new Section(in.get(RailSectionForm.THICKNESS), in.get(RailSectionForm.WIDTH));
        return new BottomRail(section, in.get(ABOVE));
    }

    @Override
    protected void write(BottomRail value, Lines out) {
        out.put(RailSectionForm.WIDTH, value.section().width());
        out.put(RailSectionForm.THICKNESS, value.section().thickness());
        out.put(ABOVE, value.aboveNosings());
    }
}
