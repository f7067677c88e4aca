package pitchboard.rules.books.pacific;

import static pitchboard.measure.Length.mm;

import java.util.List;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseDeviationAtMost;
import pitchboard.rules.kinds.evenness.RunDeviationAtMost;
import pitchboard.rules.kinds.nosings.TreadShortfallAtMost;
import pitchboard.rules.kinds.nosings.TreadWidthAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtMost;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.room.WidthBesideTwoRailsAtLeast;
import pitchboard.rules.kinds.steps.FlightRisersAtMost;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RisersInLineAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.RunAtMost;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtMost;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** AS 1657, 2018, Australia: what it says about a straight stair to a platform or walkway. */
public final class As1657 {
    private static final Edition EDITION =
            new Edition("AS 1657: fixed platforms, walkways, stairways and ladders", "2018", "AS 1657:2018");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Fixed stairs to platforms and walkways at work in Australia.";
    private static final Rulebook BOOK = book();

    private As1657() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), flight());
        return Rulebook.of("AS 1657:2018", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new PitchAtLeast(IN.read("s.7"), Angle.degrees(20)),
                new PitchAtMost(IN.read("s.7"), Angle.degrees(45)),
                new RiseAtLeast(IN.read("s.7"), mm(130)),
                new RiseAtMost(IN.read("s.7"), mm(225)),
                new RunAtLeast(IN.read("s.7"), mm(215)),
                new RunAtMost(IN.read("s.7"), mm(355)),
                new TopRunAtLeast(IN.read("s.7"), mm(215)),
                new TopRunAtMost(IN.read("s.7"), mm(355)),
                new StepFormulaAtLeast(IN.memory("s.7"), mm(540)),
                new StepFormulaAtMost(IN.memory("s.7"), mm(700)),
                new TreadWidthAtLeast(IN.read("s.7"), mm(185)),
                new TreadShortfallAtMost(IN.read("s.7"), mm(30)));
    }

    private static List<Rule> flight() {
        return List.of(
                new RiseDeviationAtMost(IN.read("s.7"), mm(5)),
                new RunDeviationAtMost(IN.read("s.7"), mm(5)),
                new FlightRisersAtMost(IN.read("s.7"), new Count(18)),
                new RisersInLineAtMost(IN.read("s.7"), new Count(36)),
                new ClearWidthAtLeast(IN.read("s.7"), mm(600)),
                new WidthBesideTwoRailsAtLeast(IN.read("s.7"), mm(550)),
                new HeadroomAtLeast(IN.read("s.7"), mm(2000), List.of()));
    }
}
