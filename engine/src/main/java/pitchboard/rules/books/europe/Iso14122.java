package pitchboard.rules.books.europe;

import static pitchboard.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Ratio;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.FirstRiseReductionAtMost;
import pitchboard.rules.kinds.guards.EdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.landings.LandingWidthAtLeast;
import pitchboard.rules.kinds.nosings.FloorNosingAtLeast;
import pitchboard.rules.kinds.nosings.NosingAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtLeast;
import pitchboard.rules.kinds.pairs.PitchAtMost;
import pitchboard.rules.kinds.pairs.StepFormulaAtLeast;
import pitchboard.rules.kinds.pairs.StepFormulaAtMost;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.RunAtMost;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtMost;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** EN ISO 14122-3, 2016: what it says about a straight stair to a machine. */
public final class Iso14122 {
    private static final Edition EDITION = new Edition(
            "EN ISO 14122-3: stairs, stepladders and guard-rails of machinery", "2016", "EN ISO 14122-3:2016");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Fixed stairs that lead to machines.";
    private static final Rulebook BOOK = book();

    private Iso14122() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), flight(), room());
        return Rulebook.of("EN ISO 14122-3:2016", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new StepFormulaAtLeast(IN.read("5.x"), mm(600)),
                new StepFormulaAtMost(IN.read("5.x"), mm(660)),
                new RunAtLeast(IN.read("5.x"), mm(210)),
                new RunAtMost(IN.read("5.x"), mm(310)),
                new TopRunAtLeast(IN.read("5.x"), mm(210)),
                new TopRunAtMost(IN.read("5.x"), mm(310)),
                new PitchAtLeast(IN.read("14122-1"), Angle.degrees(20)),
                new PitchAtMost(IN.read("14122-1"), Angle.degrees(45)),
                new FirstRiseReductionAtMost(IN.read("5.x"), Ratio.of(15, 100)),
                new NosingAtLeast(IN.read("5.x"), mm(10), List.of()),
                new FloorNosingAtLeast(IN.read("5.x"), mm(10), List.of()));
    }

    private static List<Rule> flight() {
        return List.of(
                new FlightRiseAtMost(IN.read("5.x"), mm(4000)),
                new LandingDepthAtLeast(End.BOTTOM, IN.read("5.x"), Optional.of(mm(800)), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.read("5.x"), Optional.of(mm(800)), List.of()),
                new LandingWidthAtLeast(End.BOTTOM, IN.read("5.x"), List.of()),
                new LandingWidthAtLeast(End.TOP, IN.read("5.x"), List.of()));
    }

    private static List<Rule> room() {
        return List.of(
                new ClearWidthAtLeast(IN.read("5.x"), mm(800), shortFlight()),
                new HeadroomAtLeast(IN.memory("5.x"), mm(2300), List.of()),
                new HandrailHeightAtLeast(IN.memory("7.x"), mm(900)),
                new HandrailHeightAtMost(IN.memory("7.x"), mm(1000)),
                new EdgeGuardHeightAtLeast(IN.memory("7.x"), mm(1100)));
    }

    private static List<Proviso> shortFlight() {
        return ClearWidthAtLeast.ofAShortFlight(IN.read("5.x"), mm(600), mm(1500));
    }
}
