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
import pitchboard.site.Measured;
import pitchboard.site.Overhead;

/** One thing above the flight that a head could strike. */
final class OverheadForm extends GroupForm<Overhead> {
    private static final Key<String> WHAT = Key.needed("what", Forms.words(60, "edge of the loft floor"), "what it is");
    private static final Key<Measured> UNDERSIDE = Key.needed(
            "underside",
            new MeasuredForm(Bounds.UNDERSIDE),
            "how high its lowest edge is above the surface the rise was measured from");
    private static final Key<Length> FROM = Key.needed(
            "from",
            Bounds.OVERHEAD_OUT,
            "level distance from the face of the header to where it begins; with a minus when it begins behind that face");
    private static final Key<Optional<Length>> TO = Key.open(
            "to",
            Bounds.OVERHEAD_OUT,
            "level distance from the face of the header to where it ends",
            "it goes on past the foot");

    @Override
    public List<Key<?>> keys() {
        return List.of(WHAT, UNDERSIDE, FROM, TO);
    }

    @Override
    protected Overhead read(Fields in) {
        Overhead overhead = new Overhead(in.get(WHAT), in.get(UNDERSIDE), in.get(FROM), in.get(TO));
        boolean turned =
                overhead.to().filter(to -> to.isAtMost(overhead.from())).isPresent();
        if (turned && in.areSound(FROM, TO)) {
            in.refuse(TO, "an end farther from the header than where it begins");
        }
        return overhead;
    }

    @Override
    protected void write(Overhead value, Lines out) {
        out.put(WHAT, value.name());
        out.put(UNDERSIDE, value.underside());
        out.put(FROM, value.from());
        out.put(TO, value.to());
    }
}
