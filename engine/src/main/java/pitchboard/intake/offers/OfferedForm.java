package pitchboard.intake.offers;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Tape;

/** A whole file of options. */
final class OfferedForm extends GroupForm<Offered> {
    private static final Key<String> OFFER =
            Key.needed("offer", Forms.words(80, "Ways up to the sail loft"), "what the choice is called");
    private static final Key<Optional<String>> JOB = Key.open(
            "job",
            Forms.words(200, "boathouse-loft.yaml"),
            "the job file that every option begins with, seen from this file",
            "each option names its own");
    private static final Key<List<Offered.Way>> OPTIONS =
            Key.needed("options", Forms.list(new WayForm(), 2, 4), "what there is to choose from, each behind a dash");

    @Override
    public List<Key<?>> keys() {
        return List.of(OFFER, JOB, OPTIONS);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a file of options: lines such as `offer: Ways up to the sail loft` and `options:`";
    }

    @Override
    protected Offered read(Fields in) {
        Optional<String> job = in.get(JOB);
        List<Offered.Way> ways = in.get(OPTIONS);
        if (in.areSound(OPTIONS)) {
            Set<String> names = new HashSet<>();
            if (!ways.stream().allMatch(way -> names.add(way.name()))) {
                in.refuse(OPTIONS, "each name once");
            }
            if (job.isEmpty() && ways.stream().anyMatch(way -> way.job().isEmpty())) {
                in.refuse(OPTIONS, "a line `job:` in every option, or one above the options for all of them");
            }
        }
        return new Offered(
                in.get(OFFER), ways.stream().map(way -> on(way, job.orElse(""))).toList());
    }

    private static Offered.Way on(Offered.Way way, String job) {
        return new Offered.Way(
                way.at(), way.name(), way.job().isEmpty() ? job : way.job(), way.says(), way.changes(), way.although());
    }

    @Override
    protected void write(Offered value, Lines out) {
        out.put(OFFER, value.name());
        out.put(OPTIONS, value.ways());
    }
}
