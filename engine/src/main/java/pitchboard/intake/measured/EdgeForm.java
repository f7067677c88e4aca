package pitchboard.intake.measured;

import java.util.List;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.site.EdgeAbove;

/** The open edge of the upper floor beside the flight. */
final class EdgeForm extends GroupForm<EdgeAbove> {
    private static final Form<Length> OPEN = Forms.lengthOrNone(Bounds.EDGE);
    private static final Key<Length> LEFT = side("left");
    private static final Key<Length> RIGHT = side("right");

    private static Key<Length> side(String name) {
        return Key.needed(
                name,
                OPEN,
                "from the end of the treads along the edge to where its guard is to end; none where a wall stands or"
                        + " something guards the edge already");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(LEFT, RIGHT);
    }

    @Override
    protected EdgeAbove read(Fields in) {
        return new EdgeAbove(in.get(LEFT), in.get(RIGHT));
    }

    @Override
    protected void write(EdgeAbove value, Lines out) {
        out.put(LEFT, value.left());
        out.put(RIGHT, value.right());
    }
}
