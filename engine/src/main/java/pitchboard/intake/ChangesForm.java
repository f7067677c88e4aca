package pitchboard.intake;

import java.util.List;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;

/** A whole file of local changes. */
final class ChangesForm extends GroupForm<LocalChanges> {
    private static final Key<List<LocalChanges.Change>> CHANGES =
            Key.needed("changes", Forms.list(new AmendmentForm(), 1, 200), "the changes, each behind a dash");

    private final Key<String> basedOn;

    /** With an empty list of rulebooks any name is taken. */
    ChangesForm(List<String> rulebooks) {
        this.basedOn = Key.needed(
                "based on",
                Names.ofRulebooks(rulebooks),
                "the rulebook that is changed; or a file of local changes that these come on top of");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(basedOn, CHANGES);
    }

    @Override
    protected LocalChanges read(Fields in) {
        return new LocalChanges(in.get(basedOn), in.get(CHANGES));
    }

    @Override
    protected void write(LocalChanges value, Lines out) {
        out.put(basedOn, value.basedOn());
        out.put(CHANGES, value.changes());
    }
}
