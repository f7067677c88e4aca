package pitchboard.rules;

import java.util.List;
import pitchboard.brief.Brief;
import pitchboard.source.Clause;

/**
 * Clauses that a book does not hold against some uses of a stair.
 *
 * @param clauses who says so, at least one
 * @param covers the clause that is let off, with everything below it
 * @param words the stair that is let off, such as {@code a stair that stands apart from any building}
 */
public record Exemption(Brief.Use use, List<Clause> clauses, String covers, String words) {
    public Exemption {
        clauses = List.copyOf(clauses);
    }

    boolean letsOff(Rule rule, Brief brief) {
        String locus = rule.clause().locus();
        return brief.use() == use
                && locus.startsWith(covers)
                && (locus.length() == covers.length() || ". ".indexOf(locus.charAt(covers.length())) >= 0);
    }

    Verdict verdict() {
        List<String> loci = clauses.stream().map(Clause::locus).toList();
        String edition = clauses.get(0).edition().shortName();
        return Verdict.doesNotApply(
                words + " is let off " + covers + " by " + edition + " " + String.join(" and ", loci));
    }
}
