package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Guard;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The guard on the open sides. */
final class GuardForm extends GroupForm<Guard> {
    private static final String ASKED = "undecided: the rules ask for it";

    private static final Key<Boolean> WANTED =
            Key.needed("wanted", Forms.yesOrNo(), "whether the open sides get a guard");
    private static final Key<Optional<Length>> HEIGHT =
            Key.open("height", Bounds.GUARD_HEIGHT, "its top, plumb above the line of the nosings", ASKED);
    private static final Key<Optional<Length>> GAP =
            Key.open("gap", Bounds.GUARD_GAP, "the widest opening between its parts", ASKED);
    private static final Key<Optional<Length>> TRIANGLE = Key.open(
            "triangle",
            Bounds.GUARD_GAP,
            "the widest ball that passes between tread, riser and the rail above them",
            ASKED);

    @Override
    public List<Key<?>> keys() {
        return List.of(WANTED, HEIGHT, GAP, TRIANGLE);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(WANTED);
    }

    @Override
    protected Guard read(Fields in) {
        return new Guard(in.get(WANTED), in.get(HEIGHT), in.get(GAP), in.get(TRIANGLE));
    }

    @Override
    protected void write(Guard value, Lines out) {
        out.put(WANTED, value.wanted());
        out.put(HEIGHT, value.height());
        out.put(GAP, value.opening());
        out.put(TRIANGLE, value.triangle());
    }
}
