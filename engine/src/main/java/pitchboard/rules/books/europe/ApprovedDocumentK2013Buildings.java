package pitchboard.rules.books.europe;

import static pitchboard.measure.Length.mm;

import java.util.List;
import java.util.Optional;
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
import pitchboard.rules.kinds.guards.UnguardedRisersLessThan;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.landings.LandingFallAtMost;
import pitchboard.rules.kinds.landings.LandingWidthAtLeast;
import pitchboard.rules.kinds.landings.Waivers;
import pitchboard.rules.kinds.nosings.NosingAtMost;
import pitchboard.rules.kinds.nosings.TreadOverlapAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.OneRailWidthLessThan;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRisersAtMost;
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

/** Approved Document K, 2013 edition, England: what it says about a straight stair in a building that is no dwelling. */
public final class ApprovedDocumentK2013Buildings {
    private static final Edition EDITION =
            new Edition("Approved Document K: protection from falling, collision and impact", "2013", "AD K 2013");
    private static final Citing IN = new Citing(EDITION);
    private static final Rulebook UTILITY = book(
            "AD K 2013 utility",
            "Utility stairs in England: ways of escape, upkeep and the like in buildings other than dwellings.",
            190,
            16);
    private static final Rulebook GENERAL_ACCESS = book(
            "AD K 2013 general access",
            "General access stairs in England: the everyday way between floors in buildings other than dwellings.",
            170,
            12);

    private ApprovedDocumentK2013Buildings() {}

    public static Rulebook utility() {
        return UTILITY;
    }

    public static Rulebook generalAccess() {
        return GENERAL_ACCESS;
    }

    private static Rulebook book(String name, String scope, int highestRise, int mostRisers) {
        List<List<Rule>> chapters =
                List.of(steps(highestRise), flight(mostRisers), treads(), landings(), rails(), guards());
        return Rulebook.of(name, EDITION, scope, chapters, List.of());
    }

    private static List<Rule> steps(int highestRise) {
        return List.of(
                new RiseAtLeast(IN.read("Table 1.1"), mm(150)),
                new RiseAtMost(IN.read("Table 1.1"), mm(highestRise)),
                new RunAtLeast(IN.read("Table 1.1"), mm(250)),
                new RunAtMost(IN.read("Table 1.1"), mm(400)),
                new TopRunAtLeast(IN.read("Table 1.1"), mm(250)),
                new TopRunAtMost(IN.read("Table 1.1"), mm(400)),
                new StepFormulaAtLeast(IN.read("Table 1.1 note"), mm(550)),
                new StepFormulaAtMost(IN.read("Table 1.1 note"), mm(700)));
    }

    /** One rise and one going for the whole flight; no difference is named, so none is let through. */
    private static List<Rule> flight(int mostRisers) {
        return List.of(
                new RiseSpreadAtMost(IN.read("1.3"), Length.ZERO),
                new RunSpreadAtMost(IN.read("1.3"), Length.ZERO),
                new FlightRisersAtMost(IN.memory("1.18"), new Count(mostRisers)),
                new RisersInLineAtMost(IN.read("1.17"), new Count(36)),
                new ClearWidthAtLeast(IN.read("1.15"), mm(1200)),
                new HeadroomAtLeast(IN.read("1.11"), mm(2000), List.of()));
    }

    private static List<Rule> treads() {
        return List.of(
                new TreadOverlapAtLeast(IN.read("Diagram 1.1"), mm(16)),
                new NosingAtMost(IN.read("Diagram 1.1"), mm(25), List.of()));
    }

    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(End.BOTTOM, IN.read("1.20"), Optional.empty(), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.read("1.20"), Optional.empty(), List.of()),
                new LandingWidthAtLeast(End.BOTTOM, IN.read("1.20"), List.of()),
                new LandingWidthAtLeast(End.TOP, IN.read("1.20"), List.of()),
                new LandingFallAtMost(End.BOTTOM, IN.read("1.22"), Ratio.of(1, 60), onGround()),
                new LandingFallAtMost(End.TOP, IN.read("1.22"), Ratio.of(1, 60), onGround()));
    }

    private static List<Proviso> onGround() {
        return List.of(Waivers.groundOnly(IN.read("1.22")));
    }

    private static List<Rule> rails() {
        return List.of(
                new OneRailWidthLessThan(IN.read("1.34"), mm(1000)),
                new HandrailHeightAtLeast(IN.read("1.34-1.36"), mm(900)),
                new HandrailHeightAtMost(IN.read("1.34-1.36"), mm(1000)));
    }

    private static List<Rule> guards() {
        return List.of(
                new UnguardedRisersLessThan(IN.read("1.40"), new Count(2)),
                new GuardHeightAtLeast(IN.read("Diagram 3.1"), mm(900)),
                new GuardOpeningLessThan(IN.read("3.3"), mm(100)),
                ToLookAt.of(Matter.GUARD_NOT_CLIMBABLE, IN.read("3.3")),
                new EdgeGuardHeightAtLeast(IN.read("Diagram 3.1"), mm(1100)),
                new EdgeGuardOpeningLessThan(IN.read("3.3"), mm(100)));
    }
}
