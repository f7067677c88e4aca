package pitchboard.rules.books.pacific;

import static pitchboard.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Count;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseChangeAtMost;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.evenness.RunChangeAtMost;
import pitchboard.rules.kinds.evenness.RunSpreadAtMost;
import pitchboard.rules.kinds.guards.EdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.EdgeGuardOpeningLessThan;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningLessThan;
import pitchboard.rules.kinds.guards.UnguardedDropLessThan;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropLessThan;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.landings.Waivers;
import pitchboard.rules.kinds.nosings.OpenRiserGapLessThan;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.UnrailedRiseLessThan;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRisersAtLeast;
import pitchboard.rules.kinds.steps.FlightRisersAtMost;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.RunAtMost;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** National Construction Code, 2022, Australia, Housing Provisions part 11: what they say about a straight private flight. */
public final class Ncc2022 {
    private static final Edition EDITION =
            new Edition("National Construction Code, volume 2 and ABCB Housing Provisions", "2022", "NCC 2022");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Stairs in and about houses in Australia.";
    private static final Rulebook BOOK = book();

    private Ncc2022() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), flight(), landings(), rails(), guards());
        return Rulebook.of("NCC 2022 private", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseAtLeast(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(115)),
                new RiseAtMost(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(190)),
                new RunAtLeast(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(240)),
                new RunAtMost(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(355)),
                new TopRunAtLeast(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(240)),
                new TopRunAtMost(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(355)),
                new StepFormulaAtLeast(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(550)),
                new StepFormulaAtMost(IN.elsewhere("HP 11.2.2 Table 11.2.2a"), mm(700)));
    }

    /** Neighbours and the whole flight are limited apart. */
    private static List<Rule> flight() {
        return List.of(
                new FlightRisersAtLeast(IN.read("HP 11.2.2"), new Count(2), FlightRisersAtLeast.Fewer.FORBIDDEN),
                new FlightRisersAtMost(IN.read("HP 11.2.2"), new Count(18)),
                new RiseChangeAtMost(IN.read("HP 11.2.2"), mm(5)),
                new RunChangeAtMost(IN.read("HP 11.2.2"), mm(5)),
                new RiseSpreadAtMost(IN.memory("HP 11.2.2"), mm(10)),
                new RunSpreadAtMost(IN.memory("HP 11.2.2"), mm(10)),
                new OpenRiserGapLessThan(IN.read("HP 11.2.2"), mm(125), List.of()),
                new HeadroomAtLeast(IN.memory("HP 10.3.1"), mm(2000), List.of()),
                ToLookAt.of(Matter.SLIP_RESISTANCE, IN.memory("HP 11.2.4"), "P3 or R10 dry, P4 or R11 wet"));
    }

    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(End.BOTTOM, IN.read("HP 11.2.5"), Optional.of(mm(750)), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.read("HP 11.2.5"), Optional.of(mm(750)), lowClimb()));
    }

    private static List<Proviso> lowClimb() {
        return List.of(Waivers.topOfLowClimb(IN.read("HP 11.2.5"), mm(570)));
    }

    private static List<Rule> rails() {
        return List.of(
                new UnrailedRiseLessThan(IN.memory("HP 11.3.5"), mm(1000)),
                new HandrailHeightAtLeast(IN.memory("HP 11.3.5"), mm(865)));
    }

    /** Over stairs 865 mm of height are enough. */
    private static List<Rule> guards() {
        return List.of(
                new UnguardedDropLessThan(IN.memory("HP 11.3.3"), mm(1000)),
                new GuardHeightAtLeast(IN.memory("HP 11.3.4"), mm(865)),
                new GuardOpeningLessThan(IN.memory("HP 11.3.4"), mm(125)),
                new UnguardedEdgeDropLessThan(IN.memory("HP 11.3.3"), mm(1000)),
                new EdgeGuardHeightAtLeast(IN.memory("HP 11.3.4"), mm(1000)),
                new EdgeGuardOpeningLessThan(IN.memory("HP 11.3.4"), mm(125)));
    }
}
