package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import pitchboard.source.Edition;

/**
 * One edition of one document, as rules, with the local changes that apply.
 *
 * @param scope one sentence: which stairs this book is about
 * @param amendments the local changes, already worked into {@code entries}
 */
public record Rulebook(Edition edition, String scope, List<Entry> entries, List<Amendment> amendments) {
    public Rulebook {
        entries = List.copyOf(entries);
        amendments = List.copyOf(amendments);
    }

    /** A rule, and the local change that made it what it is. */
    public record Entry(Rule rule, Optional<Amendment> changedBy) {}
}
