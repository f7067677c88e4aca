package pitchboard.intake.wanted;

import java.util.List;
import pitchboard.brief.Handrail.Grip.Recess;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The finger recesses of a handrail, alike on both sides. */
final class RecessForm extends GroupForm<Recess> {
    private static final Key<Length> START =
            Key.needed("start", Bounds.RAIL_RECESS, "from the top of the rail down to where the recess begins");
    private static final Key<Length> DEPTH =
            Key.needed("depth", Bounds.RAIL_RECESS, "how far it reaches in from the side");
    private static final Key<Length> HEIGHT =
            Key.needed("height", Bounds.RAIL_RECESS, "over which it keeps that depth");

    @Override
    public List<Key<?>> keys() {
        return List.of(START, DEPTH, HEIGHT);
    }

    @Override
    protected Recess read(Fields in) {
        return new Recess(in.get(START), in.get(DEPTH), in.get(HEIGHT));
    }

    @Override
    protected void write(Recess value, Lines out) {
        out.put(START, value.start());
        out.put(DEPTH, value.depth());
        out.put(HEIGHT, value.height());
    }
}
