package pitchboard.rules.kinds;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Reading;
import pitchboard.rules.Rule;
import pitchboard.rules.Verdict;
import pitchboard.source.Clause;
import pitchboard.stair.Stair;

/**
 * A rule that nobody has to follow: a stair that does not is no failure but something to decide, and it has no say in
 * risers and run.
 *
 * @param rule what is advised, of any kind
 */
public record Advised(Rule rule) implements Rule {
    @Override
    public String id() {
        return rule.id();
    }

    @Override
    public String subject() {
        return rule.subject();
    }

    @Override
    public Clause clause() {
        return rule.clause();
    }

    @Override
    public Optional<Limit> limit() {
        return rule.limit();
    }

    @Override
    public Advised withLimit(Quantity value) {
        return new Advised(rule.withLimit(value));
    }

    @Override
    public List<Proviso> provisos() {
        return rule.provisos();
    }

    @Override
    public Advised withProvisos(List<Proviso> others) {
        return new Advised(rule.withProvisos(others));
    }

    @Override
    public List<Reading> restsOn() {
        return rule.restsOn();
    }

    @Override
    public Verdict judge(Stair stair) {
        Verdict verdict = rule.judge(stair);
        return verdict instanceof Verdict.Fail fail ? toDecide(fail) : verdict;
    }

    private static Verdict toDecide(Verdict.Fail fail) {
        String question = "decide whether {} will do: no code asks, but the advice is "
                + fail.limit().bound().words();
        Phrase missing =
                Phrase.of(question + " {}", fail.measured(), fail.limit().value());
        return new Verdict.CannotTell(missing.and("; to keep to it, ", fail.remedy()), Optional.empty());
    }
}
