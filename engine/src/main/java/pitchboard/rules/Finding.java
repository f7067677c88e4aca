package pitchboard.rules;

import java.util.Optional;

/**
 * One rule's verdict on one stair.
 *
 * @param changedBy the local change that moved the limit, when one did
 */
public record Finding(Rule rule, Verdict verdict, Optional<Amendment> changedBy) {
    public boolean isFailure() {
        return verdict instanceof Verdict.Fail;
    }
}
