package pitchboard.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pitchboard.stair.Stair;

/** Judges a stair by a rulebook. */
public final class Checker {
    private static final Comparator<Finding> WORST_FIRST = Comparator.comparing(Checker::rank);

    private Checker() {}

    /** One finding for each rule: what fails, what cannot be told, what passes, what does not apply. */
    public static List<Finding> check(Stair stair, Rulebook book) {
        List<Finding> findings = new ArrayList<>();
        for (Rulebook.Entry entry : book.entries()) {
            Verdict verdict = book.findRelease(entry, stair.brief()).orElseGet(() -> judged(entry.rule(), stair));
            findings.add(new Finding(entry.rule(), verdict, entry.changes()));
        }
        return worstFirst(findings);
    }

    /** In the order they are told. */
    public static List<Finding> worstFirst(List<Finding> findings) {
        return findings.stream().sorted(WORST_FIRST).toList();
    }

    /** A pass that rests on a reading nobody took is no pass. */
    private static Verdict judged(Rule rule, Stair stair) {
        Verdict verdict = rule.judge(stair);
        Optional<Verdict> doubt =
                verdict instanceof Verdict.Pass ? Reading.findDoubt(rule.restsOn(), stair.site()) : Optional.empty();
        return doubt.orElse(verdict);
    }

    private static int rank(Finding finding) {
        return finding.verdict().match(pass -> 2, fail -> 0, doesNotApply -> 3, cannotTell -> 1);
    }
}
