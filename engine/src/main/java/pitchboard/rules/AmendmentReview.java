package pitchboard.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchboard.measure.Phrase;
import pitchboard.measure.Quantity;
import pitchboard.rules.Amended.Problem;
import pitchboard.rules.Amending.Target;
import pitchboard.rules.Rulebook.Entry;
import pitchboard.source.Clause;

/** Looks whether a change makes sense for a book, and says what would. */
record AmendmentReview(String book, List<Entry> entries, Amendment amendment) {
    Optional<Problem> findProblem() {
        if (amendment.saidBy().isBlank()) {
            return problem("the change to " + name() + " does not say who says so", "name the office or the ordinance");
        }
        List<Rule> rules = entries.stream()
                .filter(entry -> Target.isRule(entry, amendment))
                .map(Entry::rule)
                .toList();
        if (rules.size() > 1) {
            return problem(
                    book + " has " + rules.size() + " rules called " + name(),
                    "name the clause: " + loci(rules.stream().map(Rule::clause)));
        }
        return rules.isEmpty() ? provisoProblem() : ruleProblem(rules.get(0));
    }

    private Optional<Problem> ruleProblem(Rule rule) {
        if (isChangedBefore(rule.subject())) {
            return changedBefore();
        }
        if (amendment.limit().isEmpty()) {
            return Optional.empty();
        }
        if (rule.limit().isEmpty()) {
            return problem(
                    name() + " has no limit to change",
                    "say `limit: not enforced` to lift it, or leave the change out");
        }
        return valueProblem(rule.limit().get());
    }

    private Optional<Problem> provisoProblem() {
        Optional<Proviso> proviso = entries.stream()
                .flatMap(entry -> Target.findProviso(entry, amendment).stream())
                .findFirst();
        if (proviso.isEmpty()) {
            return unknown();
        }
        if (isChangedBefore(proviso.get().words())) {
            return changedBefore();
        }
        if (amendment.limit().isEmpty() || proviso.get().limit().isEmpty()) {
            String rules = String.join(
                    " or ",
                    entries.stream()
                            .filter(entry ->
                                    Target.findProviso(entry, amendment).isPresent())
                            .map(entry -> entry.rule().id())
                            .toList());
            return problem(
                    name() + " is part of a rule and cannot be lifted by itself", "change " + rules + " instead");
        }
        return valueProblem(proviso.get().limit().get());
    }

    private Optional<Problem> valueProblem(Limit printed) {
        Quantity value = amendment.limit().orElseThrow();
        if (!printed.isOfTheKindOf(value)) {
            return problem(
                    Phrase.of("the limit of " + name() + " is " + Limit.kindOf(printed.value()) + ", not "
                            + Limit.kindOf(value)),
                    Phrase.of("give " + Limit.kindOf(printed.value()) + "; the book has {}", printed.value()));
        }
        if (Limit.isBelowNothing(value)) {
            return problem(
                    Phrase.of("a limit of {} for " + name() + " is less than nothing", value),
                    Phrase.of("give it without a minus; the book has {}", printed.value()));
        }
        return Optional.empty();
    }

    private Optional<Problem> unknown() {
        List<String> loci = entries.stream()
                .flatMap(entry -> named(entry).stream())
                .distinct()
                .toList();
        if (!loci.isEmpty()) {
            String clause = amendment.clause().orElse("");
            return problem(
                    name() + " does not stand in " + clause + " of " + book,
                    "name its clause: " + String.join(" or ", loci));
        }
        return problem(book + " has no rule called " + name(), "the nearest is " + nearest());
    }

    private List<String> named(Entry entry) {
        Rule rule = entry.rule();
        return rule.id().equals(name())
                ? List.of(rule.clause().locus())
                : Proviso.find(rule.provisos(), name()).stream()
                        .map(proviso -> proviso.clause().locus())
                        .toList();
    }

    private String nearest() {
        return entries.stream()
                .map(Entry::rule)
                .flatMap(rule -> Stream.concat(
                        Stream.of(rule.id()), rule.provisos().stream().map(Proviso::id)))
                .min((a, b) -> Integer.compare(Spelling.distance(a, name()), Spelling.distance(b, name())))
                .orElse("none, for the book is empty");
    }

    private boolean isChangedBefore(String what) {
        return entries.stream()
                .filter(entry -> Target.isRule(entry, amendment)
                        || Target.findProviso(entry, amendment).isPresent())
                .flatMap(entry -> entry.changes().stream())
                .anyMatch(change -> change.what().equals(what));
    }

    private Optional<Problem> changedBefore() {
        return problem(name() + " was changed before", "keep one change for each rule");
    }

    private String name() {
        return amendment.rule();
    }

    private static String loci(Stream<Clause> clauses) {
        return String.join(" or ", clauses.map(Clause::locus).toList());
    }

    private Optional<Problem> problem(String wrong, String right) {
        return problem(Phrase.of(wrong), Phrase.of(right));
    }

    private Optional<Problem> problem(Phrase wrong, Phrase right) {
        return Optional.of(new Problem(amendment, wrong, right));
    }
}
