package pitchboard.intake.offers;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.intake.written.Written;

/** One way of doing the job. */
final class WayForm extends GroupForm<Offered.Way> {
    private static final Key<String> NAME =
            Key.needed("name", Forms.words(40, "Open between the treads"), "what the customer calls it by");
    private static final Key<Optional<String>> JOB = Key.open(
            "job", Forms.words(200, "boathouse-loft.yaml"), "its job file, seen from this one", "that of the offer");
    private static final Key<String> SAYS = Key.defaulting(
            "says", Forms.words(200, "Lighter, and dries sooner."), "what speaks for it", "nothing", units -> "");
    private static final Key<Optional<Written.Group>> CHANGES = Key.open(
            "changes",
            new AsWritten(),
            "lines of a job file that go before the job's own; `left out` takes a line away",
            "the job as it is");
    private static final Key<Optional<String>> ALTHOUGH = Key.open(
            "although",
            Forms.words(200, "The building office allows it in a letter."),
            "why it is offered in spite of a rule that fails or a member that does not carry; the customer reads it",
            "such an option is not offered");

    @Override
    public List<Key<?>> keys() {
        return List.of(NAME, JOB, SAYS, CHANGES, ALTHOUGH);
    }

    /** An empty job stands for that of the offer. */
    @Override
    protected Offered.Way read(Fields in) {
        return new Offered.Way(
                in.place(), in.get(NAME), in.get(JOB).orElse(""), in.get(SAYS), in.get(CHANGES), in.get(ALTHOUGH));
    }

    @Override
    protected void write(Offered.Way value, Lines out) {
        out.put(NAME, value.name());
        out.put(JOB, Optional.of(value.job()).filter(job -> !job.isEmpty()));
        out.put(SAYS, value.says());
        out.put(CHANGES, value.changes());
        out.put(ALTHOUGH, value.although());
    }
}
