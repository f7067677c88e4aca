package pitchboard.intake.rates;

import java.util.List;
import pitchboard.costing.Stage;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Ratio;

/** A payment on the way. */
final class StageForm extends GroupForm<Stage> {
    private static final Key<String> WHEN =
            Key.needed("when", Forms.words(80, "when the stringers hang"), "when it is due");
    private static final Key<Ratio> SHARE = Key.needed("share", Numbers.share(100, "40 %"), "of the price");

    @Override
    public List<Key<?>> keys() {
        return List.of(WHEN, SHARE);
    }

    @Override
    protected Stage read(Fields in) {
        return new Stage(in.get(WHEN), in.get(SHARE));
    }

    @Override
    protected void write(Stage value, Lines out) {
        out.put(WHEN, value.when());
        out.put(SHARE, value.share());
    }
}
