package pitchboard.rules.kinds.guards;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import pitchboard.measure.Length;
import pitchboard.rules.Limit;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;

/**
 * How high one rail may be that is handrail and top of the guard at once, wherever several books hold together.
 *
 * @param least empty when none of the books has a floor
 * @param most empty when none of them has a ceiling
 */
public record OneRail(Optional<Length> least, Optional<Length> most) {
    /** The heights that all books let through, with their local changes. */
    public static OneRail under(List<Rulebook> books) {
        return new OneRail(
                find(books, OneRail::isFloor, Length::max), find(books, rule -> !isFloor(rule), Length::min));
    }

    /** Whether no height does for all of them, so that handrail and guard must be two. */
    public boolean mustBeTwo() {
        return least.isPresent() && most.isPresent() && least.get().isMoreThan(most.get());
    }

    public boolean admits(Length height) {
        return least.filter(height::isLessThan).isEmpty()
                && most.filter(height::isMoreThan).isEmpty();
    }

    private static Optional<Length> find(List<Rulebook> books, Predicate<Rule> side, BinaryOperator<Length> strictest) {
        return books.stream()
                .flatMap(book -> book.entries().stream())
                .filter(entry -> entry.findLifting().isEmpty())
                .map(Rulebook.Entry::rule)
                .filter(OneRail::isAboutHeight)
                .filter(side)
                .flatMap(rule -> rule.limit().stream())
                .map(Limit::value)
                .map(Length.class::cast)
                .reduce(strictest);
    }

    private static boolean isAboutHeight(Rule rule) {
        return isFloor(rule) || rule instanceof HandrailHeightAtMost || rule instanceof GuardAsHandrailAtMost;
    }

    private static boolean isFloor(Rule rule) {
        return rule instanceof HandrailHeightAtLeast
                || rule instanceof GuardHeightAtLeast
                || rule instanceof GuardAsHandrailAtLeast;
    }
}
