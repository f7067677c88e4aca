package pitchboard.rules.books.europe;

import static pitchboard.measure.Length.mm;

import java.util.List;
import pitchboard.measure.Count;
import pitchboard.measure.Ratio;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.FirstRiseDeviationAtMost;
import pitchboard.rules.kinds.evenness.RiseChangeAtMost;
import pitchboard.rules.kinds.evenness.RiseDeviationAtMost;
import pitchboard.rules.kinds.evenness.RunChangeAtMost;
import pitchboard.rules.kinds.evenness.RunDeviationAtMost;
import pitchboard.rules.kinds.guards.EdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.EdgeGuardOpeningAtMost;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningAtMost;
import pitchboard.rules.kinds.nosings.NosingAtLeast;
import pitchboard.rules.kinds.nosings.TreadOverlapAtLeast;
import pitchboard.rules.kinds.nosings.Waiver;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRisersAtLeast;
import pitchboard.rules.kinds.steps.FlightRisersAtMost;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.RunAtMost;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtMost;
import pitchboard.rules.kinds.steps.TreadSlopeAtMost;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** DIN 18065, issues of 2011 to 2020, Germany: what it says about a straight stair in a house. */
public final class Din18065 {
    private static final Edition EDITION = new Edition("DIN 18065: stairs in buildings", "2011 to 2020", "DIN 18065");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE =
            "Stairs in Germany that building law asks for, in houses of one or two dwellings.";
    private static final Rulebook BOOK = book();

    private Din18065() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), evenness(), treads(), room(), rails());
        return Rulebook.of("DIN 18065 dwelling", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseAtLeast(IN.read("Table 1"), mm(140)),
                new RiseAtMost(IN.read("Table 1"), mm(200)),
                new RunAtLeast(IN.read("Table 1"), mm(230)),
                new RunAtMost(IN.read("Table 1"), mm(370)),
                new TopRunAtLeast(IN.read("Table 1"), mm(230)),
                new TopRunAtMost(IN.read("Table 1"), mm(370)),
                new StepFormulaAtLeast(IN.read("6.x"), mm(590)),
                new StepFormulaAtMost(IN.read("6.x"), mm(650)),
                new FlightRisersAtLeast(IN.read("3.x"), new Count(3), FlightRisersAtLeast.Fewer.NO_FLIGHT),
                new FlightRisersAtMost(IN.read("6.x"), new Count(18)));
    }

    /** Against the plan and from step to step; only the first rise of a flight made in a workshop is let go farther. */
    private static List<Rule> evenness() {
        return List.of(
                new RiseDeviationAtMost(IN.read("7"), mm(5)),
                new RunDeviationAtMost(IN.read("7"), mm(5)),
                new RiseChangeAtMost(IN.read("7"), mm(5)),
                new RunChangeAtMost(IN.read("7"), mm(5)),
                new FirstRiseDeviationAtMost(IN.read("7"), mm(15)),
                new TreadSlopeAtMost(IN.read("7"), Ratio.of(1, 100)));
    }

    /** Treads reach 30 mm over those below, if they are open or the run is under 260 mm. */
    private static List<Rule> treads() {
        return List.of(
                new TreadOverlapAtLeast(IN.memory("6.x"), mm(30)),
                new NosingAtLeast(IN.memory("6.x"), mm(30), List.of(Waiver.from(IN.memory("6.x"), mm(260)))));
    }

    private static List<Rule> room() {
        return List.of(
                new ClearWidthAtLeast(IN.read("Table 1"), mm(800)),
                new HeadroomAtLeast(IN.read("6.x"), mm(2000), List.of()));
    }

    private static List<Rule> rails() {
        return List.of(
                new HandrailHeightAtLeast(IN.memory("6.x"), mm(800)),
                new HandrailHeightAtMost(IN.memory("6.x"), mm(1150)),
                new GuardHeightAtLeast(IN.read("MBO s.38"), mm(900)),
                new GuardOpeningAtMost(IN.read("MBO s.38"), mm(120)),
                new EdgeGuardHeightAtLeast(IN.read("MBO s.38"), mm(900)),
                new EdgeGuardOpeningAtMost(IN.read("MBO s.38"), mm(120)));
    }
}
