package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Support;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The posts under the stringers, between foot and head. */
final class SupportForm extends GroupForm<Support> {
    private static final Key<Length> AT =
            Key.needed("at", Bounds.SUPPORT_AT, "level, from the first riser cut to the middle of the posts");
    private static final Key<Length> WIDTH =
            Key.needed("width", Bounds.POST_SECTION, "of a post, along the run, as it measures");
    private static final Key<Length> THICKNESS =
            Key.needed("thickness", Bounds.POST_SECTION, "of a post, across the flight, as it measures");

    private static final Key<Optional<Length>> FOOTING = Key.open(
            "footing", Bounds.PAD_SIDE, "side of the square footing under each post", "the papers say what it must be");

    @Override
    public List<Key<?>> keys() {
        return List.of(AT, WIDTH, THICKNESS, FOOTING);
    }

    @Override
    protected Support read(Fields in) {
        return new Support(in.get(AT), in.get(WIDTH), in.get(THICKNESS), in.get(FOOTING));
    }

    @Override
    protected void write(Support value, Lines out) {
        out.put(AT, value.at());
        out.put(WIDTH, value.width());
        out.put(THICKNESS, value.thickness());
        out.put(FOOTING, value.footing());
    }
}
