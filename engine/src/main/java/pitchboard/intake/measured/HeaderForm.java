package pitchboard.intake.measured;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;
import pitchboard.site.HeadSupport;

/** What holds the head of the flight. */
final class HeaderForm extends GroupForm<HeadSupport> {
    private static final Key<String> WHAT =
            Key.needed("what", Forms.words(60, "loft beam"), "the plumb face of timber that holds the head");
    private static final Key<Length> DEPTH = Key.needed("depth", Bounds.HEADER_DEPTH, "its height, as it measures");
    private static final Key<Length> DECKING = Key.needed(
            "decking",
            Forms.lengthOrNone(Bounds.DECKING),
            "thickness of all that lies on top of it when the job is done, up to the finished upper surface");
    private static final Key<Optional<Length>> OVERHANG = Key.open(
            "decking overhang",
            Forms.lengthOrNone(Bounds.DECKING_OVERHANG),
            "how far that decking reaches past the face of the header",
            "the rules ask for it");

    @Override
    public List<Key<?>> keys() {
        return List.of(WHAT, DEPTH, DECKING, OVERHANG);
    }

    @Override
    protected HeadSupport read(Fields in) {
        return new HeadSupport(in.get(WHAT), in.get(DEPTH), in.get(DECKING), in.get(OVERHANG));
    }

    @Override
    protected void write(HeadSupport value, Lines out) {
        out.put(WHAT, value.name());
        out.put(DEPTH, value.depth());
        out.put(DECKING, value.decking());
        out.put(OVERHANG, value.deckingOverhang());
    }
}
