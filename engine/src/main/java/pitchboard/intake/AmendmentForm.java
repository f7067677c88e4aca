package pitchboard.intake;

import java.util.List;
import java.util.Optional;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.measure.Quantity;
import pitchboard.rules.Amendment;

/** One local change to one rule. */
final class AmendmentForm extends GroupForm<LocalChanges.Change> {
    private static final Key<String> RULE =
            Key.needed("rule", Forms.words(60, "rise-at-most"), "the name of the rule, as findings print it");
    private static final Key<Optional<String>> CLAUSE = Key.open(
            "clause",
            Forms.words(60, "R311.7.5.1"),
            "the clause the rule stands in",
            "every rule of that name; write it where the book has the name more than once");
    private static final Key<Optional<Quantity>> LIMIT =
            Key.needed("limit", Forms.wordForNone("not enforced", Forms.limit()), "the limit that holds here instead");
    private static final Key<String> SAID_BY = Key.needed(
            "said by", Forms.words(200, "county building office"), "who says so: an office, an ordinance, an official");
    private static final Key<String> SINCE = Key.defaulting(
            "since", Forms.words(80, "1 January 2027"), "from when, in your own words", "nothing", units -> "");
    private static final Key<String> WHY = Key.defaulting(
            "why", Forms.words(400, "older houses here"), "the reason, in your own words", "nothing", units -> "");

    @Override
    public List<Key<?>> keys() {
        return List.of(RULE, CLAUSE, LIMIT, SAID_BY, SINCE, WHY);
    }

    @Override
    protected LocalChanges.Change read(Fields in) {
        Amendment amendment =
                new Amendment(in.get(RULE), in.get(CLAUSE), in.get(LIMIT), in.get(SAID_BY), in.get(SINCE), in.get(WHY));
        return new LocalChanges.Change(in.place(), amendment);
    }

    @Override
    protected void write(LocalChanges.Change change, Lines out) {
        Amendment value = change.amendment();
        out.put(RULE, value.rule());
        out.put(CLAUSE, value.clause());
        out.put(LIMIT, value.limit());
        out.put(SAID_BY, value.saidBy());
        out.put(SINCE, value.since());
        out.put(WHY, value.why());
    }
}
