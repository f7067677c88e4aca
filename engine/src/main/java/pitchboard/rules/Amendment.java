package pitchboard.rules;

import java.util.Optional;
import pitchboard.measure.Quantity;

/**
 * A local change to one rule of a book.
 *
 * @param rule id of the rule, or of one of its provisos
 * @param clause the clause it stands in there, when several rules of the book share the id; empty otherwise
 * @param limit the new limit; empty when the rule is not enforced at all
 * @param saidBy who says so: an office, an ordinance, an official in person; never empty
 * @param since from when, as written; may be empty
 * @param why as written; may be empty
 */
public record Amendment(
        String rule, Optional<String> clause, Optional<Quantity> limit, String saidBy, String since, String why) {
    /** Whether both are meant for one rule: of the same id, and not in two clauses. */
    public boolean isAboutTheSameAs(Amendment other) {
        boolean twoClauses = clause.isPresent() && other.clause.isPresent() && !clause.equals(other.clause);
        return rule.equals(other.rule) && !twoClauses;
    }
}
