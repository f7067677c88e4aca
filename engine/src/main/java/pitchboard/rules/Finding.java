package pitchboard.rules;

import java.util.List;

/**
 * One rule's verdict on one stair.
 *
 * @param changes the local changes that made the rule what it is; empty when it stands as printed
 */
public record Finding(Rule rule, Verdict verdict, List<Change> changes) {
    public Finding {
        changes = List.copyOf(changes);
    }

    public boolean isFailure() {
        return verdict instanceof Verdict.Fail;
    }
}
