package pitchboard.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.HeadFixing;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.Material;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerChecks;
import pitchboard.measure.Length;
import pitchboard.measure.Phrase;
import pitchboard.rules.Place;
import pitchboard.rules.Verdict;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Answer;
import pitchboard.strength.Force;
import pitchboard.strength.MemberChecks;
import pitchboard.strength.Section;
import pitchboard.strength.Units;
import pitchboard.strength.Utilisation;

/** What the checks of the stringers say. */
final class StringerFindings {
    private static final String UNASKED = "one load on one stringer alone would use {} of what it may; codes ask for it"
            + " only of a tread, and published limits leave it out: let the official or an engineer say whether it counts";

    private final Stair stair;
    private final Basis basis;
    private final StringerCase it;
    private final StringerChecks checks;
    private final Judging<StringerChecks> judging;

    StringerFindings(Stair stair, Basis basis, StringerCase it, Material wood, Phrase remedy) {
        this.stair = stair;
        this.basis = basis;
        this.it = it;
        this.checks = new StringerChecks(basis, it, wood);
        this.judging = new Judging<>(
                MemberFinding.Topic.STRINGERS,
                checks,
                basis.woods()
                        .findBestStringer(it.board().breadth(), it.board().depth())
                        .map(best -> new StringerChecks(basis, it, best)),
                basis.woods().bestName(),
                Place.WHOLE_FLIGHT,
                remedy,
                wood.source());
    }

    List<MemberFinding> findings() {
        List<MemberFinding> findings = new ArrayList<>();
        findings.add(judging.of(
                named("bending", "bending of the stringers", "the stringers carry {} of what they may in bending"),
                StringerChecks::bending));
        findings.add(judging.of(
                named("shear", "shear in the stringers", "the stringers carry {} of what they may in shear"),
                each -> Answer.known(each.shear())));
        findings.add(judging.of(
                named(
                        "push",
                        "bending of the stringers with the push along them",
                        "with the push and pull along them the stringers carry {} of what they may"),
                StringerChecks::together));
        findings.add(judging.of(
                named("sag", "sag of the stringers", "the stringers sag {} of what they may"),
                each -> Answer.known(each.deflection())));
        findings.add(pointLoad());
        findings.add(judging.of(
                named("foot", "bearing at the foot", "the feet of the stringers bear {} of what they may"),
                StringerChecks::standing));
        findings.addAll(head());
        findings.add(notches());
        return findings;
    }

    private static Judging.Name named(String id, String subject, String plain) {
        return new Judging.Name("stringer-" + id, subject, plain);
    }

    private MemberFinding pointLoad() {
        Judging.Name name = named(
                "point-load", "one load on one stringer", "one load on one stringer alone uses {} of what it may bear");
        return basis.isEurocode()
                ? judging.of(name, StringerChecks::pointLoad)
                : judging.advised(name, StringerChecks::pointLoad, UNASKED);
    }

    private List<MemberFinding> head() {
        Judging.Name bearing =
                named("head", "bearing at the head", "the heads of the stringers bear {} of what they may");
        if (!(stair.brief().headFixing() instanceof HeadFixing.Ledger ledger)) {
            return List.of(judging.finding(
                    bearing,
                    Verdict.doesNotApply("nothing is under the head: it hangs, and its joint is checked by itself"),
                    Phrase.of("the head hangs on its joint"),
                    Optional.empty()));
        }
        Judging.Name notch = named(
                "head-notch", "shear beside the notch over the ledger", "the notched heads carry {} of what they may");
        return List.of(
                judging.of(bearing, each -> Answer.known(bearing(ledger, each))),
                judging.of(notch, each -> notched(ledger, each)));
    }

    private Utilisation bearing(HeadFixing.Ledger ledger, StringerChecks each) {
        Force reaction = each.headReaction();
        Figure figure = MemberChecks.figure(
                "R",
                "load on one head",
                "w·L ÷ 2",
                basis.units().show(reaction),
                new Figure.Input("w", basis.units().show(checks.spread())),
                new Figure.Input("L", it.headSpan()));
        return basis.checks()
                .bearing(
                        "people over the whole flight, and its own weight",
                        figure,
                        reaction,
                        it.board().breadth(),
                        ledger.thickness(),
                        each.wood().bearing(ledger.thickness()));
    }

    /** The depth square to the board that the plumb cut has, whole and above the ledger. */
    private Answer<Utilisation> notched(HeadFixing.Ledger ledger, StringerChecks each) {
        Length plumb = new StringerShape(stair).plumbCut();
        Length whole = Units.near(plumb.approxMm() * it.cosine());
        Length left = Units.near(plumb.minus(ledger.height()).approxMm() * it.cosine());
        Force across = checks.headReaction().times(it.cosine());
        Figure figure = MemberChecks.figure(
                "V",
                "shear across the head",
                "R·cos a",
                basis.units().show(across),
                new Figure.Input("R", basis.units().show(checks.headReaction())));
        return each.wood()
                .notchAtSupport(whole, left, ledger.thickness().dividedBy(2))
                .map(factor -> basis.checks()
                        .shear(
                                "people over the whole flight, and its own weight",
                                figure,
                                across,
                                new Section(it.board().breadth(), left),
                                each.wood().shear().with(factor)));
    }

    private Length onTape(Length length) {
        return length.rounded(stair.brief().tape().graduation());
    }

    private MemberFinding notches() {
        StringerShape shape = new StringerShape(stair);
        Length cut = onTape(shape.notchDepth());
        Length throat = onTape(shape.throat());
        Length most = onTape(it.board().depth().dividedBy(6));
        Phrase words = basis.isEurocode()
                ? Phrase.of(
                        "no published rule covers the cuts of a cut stringer, each {} deep: Eurocode 5 has one for a notch"
                                + " at a support only. Reckoned as is the practice of the trade, as a plain beam of the {}"
                                + " that is left; where it matters, a licensed engineer decides",
                        cut,
                        throat)
                : Phrase.of(
                        "no published rule covers the cuts of a cut stringer, each {} deep: the NDS lets a notch be {} deep"
                                + " at most, and nowhere in the middle third. Reckoned as is accepted practice, as a plain"
                                + " beam of the {} that is left; where it matters, a licensed engineer decides",
                        cut,
                        most,
                        throat);
        return judging.finding(
                named("notches", "cuts in the stringers", ""),
                new Verdict.CannotTell(words, Optional.empty()),
                words,
                Optional.empty());
    }

    List<Figure> figures() {
        return checks.figures();
    }
}
