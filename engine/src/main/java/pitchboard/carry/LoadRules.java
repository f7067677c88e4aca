package pitchboard.carry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import pitchboard.carry.MemberFinding.Topic;
import pitchboard.carry.members.Basis;
import pitchboard.measure.Phrase;
import pitchboard.measure.Reckoned;
import pitchboard.rules.Checker;
import pitchboard.rules.Finding;
import pitchboard.rules.Limit;
import pitchboard.rules.Place;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.stair.Stair;

/**
 * Answers the rules about loads by what was reckoned: such a rule passes where every check of its load does, and fails
 * where one does. What no published rule covers, or no code asks for, is left out.
 */
public final class LoadRules {
    private static final Limit ALL = Limit.atMost(Reckoned.share(1));

    private final Carried carried;
    /** A guard is wanted, but it is not said what it is built of: nothing of it was checked. */
    private final boolean guardUntold;

    private final boolean lighterFlight;
    private final boolean lighterTread;

    private LoadRules(Stair stair, Rulebook book, Carried carried) {
        Basis basis = Basis.of(stair, book);
        this.carried = carried;
        this.guardUntold = stair.brief().guard().wanted()
                && carried.findings().stream().noneMatch(each -> each.id().startsWith("guard-"));
        this.lighterFlight = basis.isLighterAllOverThan(book);
        this.lighterTread = basis.isLighterAtOnePlaceThan(book);
    }

    /** The same findings, worst first, those about loads answered. */
    public static List<Finding> answered(List<Finding> findings, Stair stair, Rulebook book, Carried carried) {
        LoadRules rules = new LoadRules(stair, book, carried);
        return Checker.worstFirst(findings.stream().map(rules::answered).toList());
    }

    private Finding answered(Finding finding) {
        return finding.verdict() instanceof Verdict.DoesNotApply
                ? finding
                : verdict(finding.rule().id())
                        .map(verdict -> new Finding(finding.rule(), verdict, finding.changes()))
                        .orElse(finding);
    }

    private Optional<Verdict> verdict(String rule) {
        return switch (rule) {
            case "load-on-flight" -> lighterFlight ? lighter("live load") : of(LoadRules::isOfTheFlight);
            case "load-on-tread" -> lighterTread ? lighter("point load") : of(LoadRules::isOfATread);
            case "load-on-rail" -> guardUntold ? Optional.empty() : of(LoadRules::isOfARail);
            case "load-along-rail" -> of(each -> each.id().equals("guard-rail") || isAlong(each));
            case "load-along-guard" -> of(LoadRules::isAlong);
            case "load-on-infill" -> of(each -> each.id().equals("guard-infill"));
            default -> Optional.empty();
        };
    }

    private static Optional<Verdict> lighter(String line) {
        return Optional.of(
                Verdict.cannotTell("the job states a lighter load than the rulebook asks for: leave out its line "
                        + line + ", or have the official agree to it"));
    }

    private static boolean isOfTheFlight(MemberFinding each) {
        return switch (each.topic()) {
            case STRINGERS ->
                !each.id().equals("stringer-notches") && !each.id().equals("stringer-point-load");
            case JOINTS -> each.id().startsWith("head");
            case SUPPORT, GROUND -> true;
            default -> false;
        };
    }

    private static boolean isOfATread(MemberFinding each) {
        return each.topic() == Topic.TREADS || each.id().equals("tread-nosing");
    }

    private static boolean isOfARail(MemberFinding each) {
        return each.topic() == Topic.GUARD && !isAlong(each) && !each.id().equals("guard-infill");
    }

    private static boolean isAlong(MemberFinding each) {
        return each.id().equals("guard-post-along");
    }

    /** Empty where nothing of it was checked. */
    private Optional<Verdict> of(Predicate<MemberFinding> about) {
        List<MemberFinding> checks = new ArrayList<>(carried.findings().stream()
                .filter(about)
                .filter(each -> !(each.verdict() instanceof Verdict.DoesNotApply))
                .toList());
        if (checks.isEmpty()) {
            return carried.findings().stream().filter(about).findFirst().map(MemberFinding::verdict);
        }
        checks.sort(Comparator.comparing(each -> -each.ratio().orElse(0.0)));
        return Optional.of(first(checks, Verdict.Fail.class)
                .map(LoadRules::fails)
                .or(() -> first(checks, Verdict.CannotTell.class).map(LoadRules::open))
                .orElseGet(() -> new Verdict.Pass(share(checks.get(0)), ALL)));
    }

    private static Optional<MemberFinding> first(List<MemberFinding> checks, Class<? extends Verdict> kind) {
        return checks.stream().filter(each -> kind.isInstance(each.verdict())).findFirst();
    }

    private static Reckoned share(MemberFinding check) {
        return Reckoned.share(check.ratio().orElse(0.0));
    }

    private static Verdict fails(MemberFinding worst) {
        Verdict.Fail fail = (Verdict.Fail) worst.verdict();
        if (worst.ratio().isEmpty()) {
            return fail;
        }
        Phrase remedy = Phrase.of(worst.subject()).and(": ", fail.remedy());
        return new Verdict.Fail(share(worst), ALL, Place.WHOLE_FLIGHT, remedy);
    }

    private static Verdict open(MemberFinding check) {
        Phrase missing = ((Verdict.CannotTell) check.verdict()).missing();
        return new Verdict.CannotTell(Phrase.of(check.subject()).and(": ", missing), Optional.empty());
    }
}
