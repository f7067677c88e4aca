package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Risers;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** Whether the steps are closed, and with what. */
final class RiserForm extends GroupForm<Risers> {
    private static final Key<Boolean> KIND = Key.needed(
            "kind",
            ChoiceForm.of("open", false).or("boards", true),
            "open: nothing between the treads; boards: one in front of every riser cut");
    private static final Key<Optional<Length>> THICKNESS = Key.open(
            "thickness", Bounds.RISER_THICKNESS, "of the riser boards, as it measures", "with boards it must be there");

    @Override
    public List<Key<?>> keys() {
        return List.of(KIND, THICKNESS);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(KIND);
    }

    @Override
    protected Risers read(Fields in) {
        if (in.get(KIND) && in.areSound(KIND)) {
            return new Risers.Boards(in.demand(THICKNESS, "with riser boards"));
        }
        if (in.areSound(KIND)) {
            in.forbid(THICKNESS, "where risers are open");
        }
        return new Risers.Open();
    }

    @Override
    protected void write(Risers value, Lines out) {
        out.put(KIND, value instanceof Risers.Boards);
        out.put(THICKNESS, value instanceof Risers.Boards boards ? Optional.of(boards.thickness()) : Optional.empty());
    }
}
