package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.EdgeGuard;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** The guard along the open edge of the upper floor. */
final class EdgeGuardForm extends GroupForm<EdgeGuard> {
    private static final Key<Length> HEIGHT =
            Key.needed("height", Bounds.GUARD_HEIGHT, "its top, plumb above the finished floor");
    private static final Key<Optional<Length>> ABOVE = Key.open(
            "bottom rail above floor",
            Forms.lengthOrNone(Bounds.ABOVE_NOSINGS),
            "from the finished floor up to the underside of its bottom rail",
            "it is not laid out");
    private static final Key<Optional<Length>> BALL = Key.open(
            "ball", Bounds.BALL, "that must not pass between its balusters or boards", "the same as on the flight");

    @Override
    public List<Key<?>> keys() {
        return List.of(HEIGHT, ABOVE, BALL);
    }

    @Override
    protected EdgeGuard read(Fields in) {
        return new EdgeGuard(in.get(HEIGHT), in.get(ABOVE), in.get(BALL));
    }

    @Override
    protected void write(EdgeGuard value, Lines out) {
        out.put(HEIGHT, value.height());
        out.put(ABOVE, value.railAboveFloor());
        out.put(BALL, value.ball());
    }
}
