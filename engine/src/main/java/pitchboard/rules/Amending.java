package pitchboard.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.measure.Quantity;
import pitchboard.rules.Amended.Problem;
import pitchboard.rules.Rulebook.Entry;

/** Works local changes into a book, one after the other; a change with a problem is left out. */
final class Amending {
    private final Rulebook book;
    private final List<Entry> entries;
    private final List<Amendment> done;
    private final List<Problem> problems = new ArrayList<>();

    Amending(Rulebook book) {
        this.book = book;
        this.entries = new ArrayList<>(book.entries());
        this.done = new ArrayList<>(book.amendments());
    }

    Amended workIn(List<Amendment> wanted) {
        wanted.forEach(this::workIn);
        Rulebook amended = new Rulebook(book.name(), book.edition(), book.scope(), entries, book.exemptions(), done);
        return new Amended(amended, problems);
    }

    private void workIn(Amendment amendment) {
        Optional<Problem> problem = new AmendmentReview(book.name(), entries, amendment).findProblem();
        problem.ifPresent(problems::add);
        if (problem.isEmpty()) {
            entries.replaceAll(entry -> changed(entry, amendment));
            done.add(amendment);
        }
    }

    private static Entry changed(Entry entry, Amendment amendment) {
        if (Target.isRule(entry, amendment)) {
            return changedRule(entry, amendment);
        }
        return Target.findProviso(entry, amendment)
                .map(proviso -> changedProviso(entry, proviso, amendment))
                .orElse(entry);
    }

    private static Entry changedRule(Entry entry, Amendment amendment) {
        Rule rule = entry.rule();
        Change change = new Change(amendment, rule.subject(), rule.limit());
        return with(entry, amendment.limit().map(rule::withLimit).orElse(rule), change);
    }

    private static Entry changedProviso(Entry entry, Proviso proviso, Amendment amendment) {
        Quantity value = amendment.limit().orElseThrow();
        List<Proviso> provisos = entry.rule().provisos().stream()
                .map(each -> each.equals(proviso) ? each.withLimit(value) : each)
                .toList();
        Change change = new Change(amendment, proviso.words(), proviso.limit());
        return with(entry, entry.rule().withProvisos(provisos), change);
    }

    private static Entry with(Entry entry, Rule rule, Change change) {
        List<Change> changes = new ArrayList<>(entry.changes());
        changes.add(change);
        return new Entry(rule, changes);
    }

    /** What a change is meant for. */
    static final class Target {
        private Target() {}

        static boolean isRule(Entry entry, Amendment amendment) {
            Rule rule = entry.rule();
            return rule.id().equals(amendment.rule()) && standsIn(rule.clause().locus(), amendment);
        }

        static Optional<Proviso> findProviso(Entry entry, Amendment amendment) {
            return Proviso.find(entry.rule().provisos(), amendment.rule())
                    .filter(proviso -> standsIn(proviso.clause().locus(), amendment));
        }

        private static boolean standsIn(String locus, Amendment amendment) {
            return amendment.clause().map(locus::equals).orElse(true);
        }
    }
}
