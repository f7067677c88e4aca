package pitchboard.rules;

import java.util.Optional;

/**
 * A local change at work in a rule, beside what the book itself says.
 *
 * @param what what it changed: the subject of the rule, or the words of a proviso
 * @param printed the limit as the book has it; empty when the rule has none and was lifted
 */
public record Change(Amendment amendment, String what, Optional<Limit> printed) {
    /** Whether the rule is not enforced at all. */
    public boolean lifts() {
        return amendment.limit().isEmpty();
    }
}
