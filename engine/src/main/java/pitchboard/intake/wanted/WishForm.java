package pitchboard.intake.wanted;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Wishes;
import pitchboard.intake.form.Bounds;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Length;

/** What is fixed about the steps, and what would be liked best. */
final class WishForm extends GroupForm<Wishes> {
    private static final String NO_WISH = "no wish";

    static final Key<Optional<Integer>> RISERS =
            orFree("number of risers", Bounds.RISERS, "the number that must be kept; `free` lets the program choose");
    private static final Key<Optional<Length>> RUN =
            orFree("run", Bounds.STEP_RUN, "the run of every step that must be kept; `free` lets the program choose");
    private static final Key<Optional<Length>> BEST_RISE =
            Key.open("best rise", Bounds.STEP_RISE, "choices nearer to it come first", NO_WISH);
    private static final Key<Optional<Length>> BEST_RUN =
            Key.open("best run", Bounds.STEP_RUN, "choices nearer to it come first", NO_WISH);

    private static <T> Key<Optional<T>> orFree(String name, Form<T> form, String meaning) {
        return Key.defaulting(name, Forms.wordForNone("free", form), meaning, "free", units -> Optional.empty());
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(RISERS, RUN, BEST_RISE, BEST_RUN);
    }

    @Override
    protected Wishes read(Fields in) {
        return new Wishes(in.get(RISERS), in.get(RUN), in.get(BEST_RISE), in.get(BEST_RUN));
    }

    @Override
    protected void write(Wishes value, Lines out) {
        out.put(RISERS, value.risers());
        out.put(RUN, value.run());
        out.put(BEST_RISE, value.targetRise());
        out.put(BEST_RUN, value.targetRun());
    }
}
