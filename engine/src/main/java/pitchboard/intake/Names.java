package pitchboard.intake;

import java.util.List;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Form;
import pitchboard.intake.form.Forms;

/** Names that are known elsewhere: a slip of the pen in one is found where it was written. */
final class Names {
    private Names() {}

    /** One of these names; any name when the list is empty. */
    static Form<String> of(List<String> known, String example) {
        if (known.isEmpty()) {
            return Forms.words(200, example);
        }
        ChoiceForm<String> names = ChoiceForm.of(known.get(0), known.get(0));
        for (String name : known.subList(1, known.size())) {
            names = names.or(name, name);
        }
        return names;
    }

    static Form<String> ofRulebooks(List<String> known) {
        return of(known, "IRC 2021");
    }
}
