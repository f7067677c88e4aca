package pitchboard.intake;

import java.util.ArrayList;
import java.util.List;
import pitchboard.intake.written.Spot;
import pitchboard.rules.Amendment;

/**
 * The local changes to one rulebook.
 *
 * @param basedOn the name of the rulebook they change
 */
public record LocalChanges(String basedOn, List<Change> changes) {
    public LocalChanges {
        changes = List.copyOf(changes);
    }

    /**
     * One change.
     *
     * @param at where it stands in its file, for what the rulebook may have against it
     */
    public record Change(Spot at, Amendment amendment) {}

    public List<Amendment> amendments() {
        return changes.stream().map(Change::amendment).toList();
    }

    /** These on top of others: where both change the same rule, only these hold. */
    public LocalChanges over(LocalChanges base) {
        List<Change> all = new ArrayList<>(base.changes);
        all.removeIf(below -> changes.stream().anyMatch(mine -> mine.amendment().isAboutTheSameAs(below.amendment())));
        all.addAll(changes);
        return new LocalChanges(base.basedOn, all);
    }
}
