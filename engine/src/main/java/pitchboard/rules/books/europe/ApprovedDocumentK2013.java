package pitchboard.rules.books.europe;

import static pitchboard.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.evenness.RunSpreadAtMost;
import pitchboard.rules.kinds.guards.EdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.EdgeGuardOpeningLessThan;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningLessThan;
import pitchboard.rules.kinds.guards.OutdoorEdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.UnguardedDropAtMost;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropAtMost;
import pitchboard.rules.kinds.landings.ClearOfDoorAtLeast;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.landings.LandingFallAtMost;
import pitchboard.rules.kinds.landings.LandingWidthAtLeast;
import pitchboard.rules.kinds.landings.Waivers;
import pitchboard.rules.kinds.nosings.OpenRiserGapLessThan;
import pitchboard.rules.kinds.nosings.TreadOverlapAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtMost;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.OneRailWidthLessThan;
import pitchboard.rules.kinds.rails.UnrailedRisersLessThan;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.OutdoorRunAtLeast;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RisersInLineAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.RunAtMost;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** Approved Document K, 2013 edition, England: what it says about a straight private stair. */
public final class ApprovedDocumentK2013 {
    private static final Edition EDITION =
            new Edition("Approved Document K: protection from falling, collision and impact", "2013", "AD K 2013");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Private stairs in England: within one dwelling, for those who live there.";
    private static final Rulebook BOOK = book();

    private ApprovedDocumentK2013() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), flight(), openRisers(), landings(), rails(), guards());
        return Rulebook.of("AD K 2013 private", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseAtLeast(IN.read("Table 1.1"), mm(150)),
                new RiseAtMost(IN.read("Table 1.1"), mm(220)),
                new RunAtLeast(IN.read("Table 1.1"), mm(220)),
                new RunAtMost(IN.read("Table 1.1"), mm(300)),
                new TopRunAtLeast(IN.read("Table 1.1"), mm(220)),
                new TopRunAtMost(IN.read("Table 1.1"), mm(300)),
                new OutdoorRunAtLeast(IN.read("Table 1.1 note 2"), mm(280)),
                new PitchAtMost(IN.read("Table 1.1 note 1"), Angle.degrees(42)),
                new StepFormulaAtLeast(IN.read("Table 1.1 note"), mm(550)),
                new StepFormulaAtMost(IN.read("Table 1.1 note"), mm(700)));
    }

    /** One rise and one going for the whole flight; no difference is named, so none is let through. */
    private static List<Rule> flight() {
        return List.of(
                new RiseSpreadAtMost(IN.read("1.3"), Length.ZERO),
                new RunSpreadAtMost(IN.read("1.3"), Length.ZERO),
                new RisersInLineAtMost(IN.read("1.17"), new Count(36)),
                new HeadroomAtLeast(IN.read("1.11"), mm(2000), loft()));
    }

    private static List<Proviso> loft() {
        return List.of(HeadroomAtLeast.inALoft(IN.read("1.13 (loft)"), mm(1900)));
    }

    /** Wherever children under five may be, which in a dwelling is everywhere. */
    private static List<Rule> openRisers() {
        return List.of(
                new TreadOverlapAtLeast(IN.read("Diagram 1.1"), mm(16)),
                new OpenRiserGapLessThan(IN.read("1.9"), mm(100), List.of()));
    }

    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(End.BOTTOM, IN.read("1.20"), Optional.empty(), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.read("1.20"), Optional.empty(), List.of()),
                new LandingWidthAtLeast(End.BOTTOM, IN.read("1.20"), List.of()),
                new LandingWidthAtLeast(End.TOP, IN.read("1.20"), List.of()),
                new LandingFallAtMost(End.BOTTOM, IN.read("1.22"), Ratio.of(1, 60), onGround()),
                new LandingFallAtMost(End.TOP, IN.read("1.22"), Ratio.of(1, 60), onGround()),
                new ClearOfDoorAtLeast(End.BOTTOM, IN.read("1.24 Diagram 1.8"), mm(400)));
    }

    private static List<Proviso> onGround() {
        return List.of(Waivers.groundOnly(IN.read("1.22")));
    }

    /** That a narrow flight needs one rail, and that the two bottom steps need none, is from memory. */
    private static List<Rule> rails() {
        return List.of(
                new UnrailedRisersLessThan(IN.memory("1.34"), new Count(3)),
                new OneRailWidthLessThan(IN.read("1.34"), mm(1000)),
                new HandrailHeightAtLeast(IN.read("1.34-1.36"), mm(900)),
                new HandrailHeightAtMost(IN.read("1.34-1.36"), mm(1000)));
    }

    private static List<Rule> guards() {
        return List.of(
                new UnguardedDropAtMost(IN.read("1.41"), mm(600), List.of()),
                new GuardHeightAtLeast(IN.read("Diagram 3.1"), mm(900)),
                new GuardOpeningLessThan(IN.read("3.3"), mm(100)),
                ToLookAt.of(Matter.GUARD_NOT_CLIMBABLE, IN.read("3.3")),
                new UnguardedEdgeDropAtMost(IN.read("1.41"), mm(600)),
                new EdgeGuardHeightAtLeast(IN.read("Diagram 3.1"), mm(900)),
                new OutdoorEdgeGuardHeightAtLeast(IN.read("Diagram 3.1"), mm(1100), List.of()),
                new EdgeGuardOpeningLessThan(IN.read("3.3"), mm(100)));
    }
}
