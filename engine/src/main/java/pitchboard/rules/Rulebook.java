package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.source.Edition;

/**
 * One edition of one document, as rules, with the local changes that apply.
 *
 * @param name what a job calls it by, such as {@code IRC 2021}
 * @param scope one sentence: which stairs this book is about
 * @param amendments the local changes, already worked into {@code entries}
 */
public record Rulebook(
        String name,
        Edition edition,
        String scope,
        List<Entry> entries,
        List<Exemption> exemptions,
        List<Amendment> amendments) {
    public Rulebook {
        entries = List.copyOf(entries);
        exemptions = List.copyOf(exemptions);
        amendments = List.copyOf(amendments);
    }

    /** The book as printed. */
    public static Rulebook of(
            String name, Edition edition, String scope, List<List<Rule>> chapters, List<Exemption> exemptions) {
        List<Entry> entries =
                chapters.stream().flatMap(List::stream).map(Entry::asPrinted).toList();
        return new Rulebook(name, edition, scope, entries, exemptions, List.of());
    }

    /** A rule, and the local changes that made it what it is. */
    public record Entry(Rule rule, List<Change> changes) {
        public Entry {
            changes = List.copyOf(changes);
        }

        static Entry asPrinted(Rule rule) {
            return new Entry(rule, List.of());
        }

        /** The change that says the rule is not enforced. */
        public Optional<Change> findLifting() {
            return changes.stream().filter(Change::lifts).findFirst();
        }
    }

    /** The same book with local changes worked in; what could not be understood is told beside it. */
    public Amended amended(List<Amendment> wanted) {
        return new Amending(this).workIn(wanted);
    }

    /** Empty when the rule holds; else why it does not for this stair. */
    Optional<Verdict> findRelease(Entry entry, Brief brief) {
        for (Change change : entry.changes()) {
            if (change.lifts()) {
                return Optional.of(Verdict.doesNotApply(
                        "it is not enforced here, says " + change.amendment().saidBy()));
            }
        }
        for (Exemption exemption : exemptions) {
            if (exemption.letsOff(entry.rule(), brief)) {
                return Optional.of(exemption.verdict());
            }
        }
        return Optional.empty();
    }
}
