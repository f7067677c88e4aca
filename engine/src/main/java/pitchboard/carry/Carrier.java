package pitchboard.carry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pitchboard.carry.elements.SecondOpinion;
import pitchboard.carry.joints.Caution;
import pitchboard.carry.joints.Foothold;
import pitchboard.carry.joints.GuardPostChecks;
import pitchboard.carry.joints.Pad;
import pitchboard.carry.members.Basis;
import pitchboard.carry.members.Material;
import pitchboard.carry.members.RailLoads;
import pitchboard.carry.members.StringerCase;
import pitchboard.carry.members.StringerChecks;
import pitchboard.carry.members.TreadCase;
import pitchboard.measure.Phrase;
import pitchboard.parts.StringerSpacing;
import pitchboard.parts.Worksheet;
import pitchboard.rules.Rulebook;
import pitchboard.rules.Verdict;
import pitchboard.site.FootSurface;
import pitchboard.source.Figure;
import pitchboard.source.Practice;
import pitchboard.stair.Stair;
import pitchboard.stair.StringerShape;
import pitchboard.strength.Utilisation;

/** Checks every member of a stair. */
public final class Carrier {
    private static final Comparator<MemberFinding> WORST_FIRST = Comparator.comparing(MemberFinding::topic)
            .thenComparing(finding -> finding.verdict().match(pass -> 2, fail -> 0, doesNotApply -> 3, cannot -> 1))
            .thenComparing(finding -> -finding.ratio().orElse(0.0));

    private final Stair stair;
    private final Basis basis;
    private final Optional<StringerCase> stringer;
    private final RailLoads rails;

    private Carrier(Stair stair, Rulebook book) {
        this.stair = stair;
        this.stringer =
                new StringerShape(stair).throat().isPositive() ? Optional.of(StringerCase.of(stair)) : Optional.empty();
        this.basis = Basis.of(stair, book);
        this.rails = RailLoads.of(basis, book);
    }

    /**
     * Checks a stair under the loads of a rulebook, or those the job states.
     *
     * @param others stairs that could be built here instead, best first
     */
    public static Carried check(Stair stair, Rulebook book, List<Stair> others) {
        return new Carrier(stair, book).check(others);
    }

    private Carried check(List<Stair> others) {
        if (stringer.isEmpty()) {
            return carried(List.of(nothingLeft()), List.of(), List.of());
        }
        StringerCase it = stringer.get();
        return basis.woods()
                .stringer(it.board().breadth(), it.board().depth())
                .match(
                        wood -> checked(it, wood, others),
                        because -> carried(List.of(unknown(because)), List.of(), List.of()));
    }

    private Carried checked(StringerCase it, Material wood, List<Stair> others) {
        boolean fails = new StringerChecks(basis, it, wood).worst().match(ratio -> ratio > 1, because -> false);
        List<WayOut> waysOut = fails ? new WaysOut(stair, basis, it).all(others) : List.of();
        StringerFindings stringers = new StringerFindings(stair, basis, it, wood, remedy(waysOut));
        List<MemberFinding> findings = new ArrayList<>(stringers.findings());
        if (it.supported().isEmpty()) {
            findings.add(SecondFindings.atOnce(new SecondOpinion(stair, basis, it, wood).instant()));
        }
        return carried(findings, waysOut, stringers.figures());
    }

    private static Phrase remedy(List<WayOut> waysOut) {
        return waysOut.stream()
                .filter(WayOut::helps)
                .findFirst()
                .map(WayOut::what)
                .orElseGet(() -> Phrase.of("use deeper or stronger stringers or more of them, or ask an engineer"));
    }

    private Carried carried(List<MemberFinding> stringers, List<WayOut> waysOut, List<Figure> figures) {
        TreadFindings treads = new TreadFindings(basis, TreadCase.of(stair));
        List<MemberFinding> all = new ArrayList<>(stringers);
        all.addAll(treads.findings());
        stringer.ifPresent(it -> all.addAll(held(it)));
        all.addAll(guards());
        all.addAll(new PublishedLimits(stair, basis).findings());
        all.sort(WORST_FIRST);
        return new Carried(
                basis.method(), basis.words(), cautions(), all, waysOut, treads.spacings(), worksheet(all, figures));
    }

    /** What holds the stringers up, together and on the ground. */
    private List<MemberFinding> held(StringerCase it) {
        List<MemberFinding> findings = new ArrayList<>(new HeadFindings(stair, basis, it).findings());
        findings.addAll(new FootFindings(stair, basis, it).findings());
        findings.addAll(new NosingFindings(stair, basis).findings());
        findings.addAll(new SupportFindings(stair, basis, it).findings());
        findings.addAll(new GroundFindings(stair, basis, it).findings());
        return findings;
    }

    private List<MemberFinding> guards() {
        List<MemberFinding> findings = new ArrayList<>();
        GuardCase.find(stair, rails).ifPresent(it -> findings.addAll(new GuardFindings(stair, basis, it).findings()));
        findings.addAll(new RailFindings(stair, basis, rails).findings());
        return findings;
    }

    private List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        GuardCase.find(stair, rails)
                .ifPresent(it ->
                        cautions.addAll(GuardPostChecks.cautions(it.isNotched() ? Foothold.NOTCHED : Foothold.WHOLE)));
        if (stringer.flatMap(StringerCase::supported).isPresent()) {
            cautions.add(Caution.CUT_EDGE);
        }
        if (stair.site().foot() != FootSurface.TIMBER_FLOOR) {
            cautions.addAll(Pad.cautions());
        }
        return cautions;
    }

    private static MemberFinding nothingLeft() {
        return unknown("nothing is left of the stringers under a step");
    }

    private static MemberFinding unknown(String because) {
        return new MemberFinding(
                "stringer-bending",
                MemberFinding.Topic.STRINGERS,
                "bending of the stringers",
                Verdict.cannotTell(because),
                Phrase.of("it cannot be told: " + because),
                Optional.empty(),
                Practice.GEOMETRY);
    }

    private List<Worksheet.Section> worksheet(List<MemberFinding> findings, List<Figure> stringer) {
        StringerSpacing across = StringerSpacing.of(stair.brief());
        List<Figure> loads = new ArrayList<>(basis.loads().figures(basis.units()));
        if (findings.stream().anyMatch(finding -> finding.topic() == MemberFinding.Topic.GUARD)) {
            loads.addAll(rails.figures(basis.units()));
        }
        loads.add(Figure.derived(
                "so",
                "width an outer stringer carries",
                "half the spacing + all outside it",
                StringerCase.takesOuter(across)));
        if (across.stringers().count() > 2) {
            loads.add(Figure.derived(
                    "si", "width an inner stringer carries", "the spacing", StringerCase.takesInner(across)));
        }
        loads.addAll(stringer);
        List<Worksheet.Section> sections = new ArrayList<>();
        sections.add(new Worksheet.Section("Strength: loads", loads));
        for (MemberFinding finding : findings) {
            finding.working()
                    .map(working -> new Worksheet.Section("Strength: " + finding.subject(), figures(working)))
                    .ifPresent(sections::add);
        }
        return sections;
    }

    private static List<Figure> figures(Utilisation working) {
        List<Figure> figures = new ArrayList<>(working.steps());
        figures.add(working.demand());
        figures.add(working.capacity());
        return figures;
    }
}
