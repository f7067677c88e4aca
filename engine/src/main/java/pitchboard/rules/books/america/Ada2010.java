package pitchboard.rules.books.america;

import static pitchboard.measure.Length.inches;

import java.util.List;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.grips.GripPerimeterAtLeast;
import pitchboard.rules.kinds.grips.GripPerimeterAtMost;
import pitchboard.rules.kinds.grips.GripSectionAtMost;
import pitchboard.rules.kinds.grips.RoundGripAtLeast;
import pitchboard.rules.kinds.grips.RoundGripAtMost;
import pitchboard.rules.kinds.nosings.ClosedRisers;
import pitchboard.rules.kinds.nosings.FloorNosingAtMost;
import pitchboard.rules.kinds.nosings.NosingAtMost;
import pitchboard.rules.kinds.nosings.NosingRadiusAtMost;
import pitchboard.rules.kinds.nosings.RiserRakeAtMost;
import pitchboard.rules.kinds.rails.HandrailClearanceAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.HandrailSidesAtLeast;
import pitchboard.rules.kinds.rails.RailBottomExtension;
import pitchboard.rules.kinds.rails.RailTopExtensionAtLeast;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TreadSlopeAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** 2010 ADA Standards, sections 504 and 505: what they say about stairs. */
public final class Ada2010 {
    private static final Edition EDITION = new Edition("ADA Standards for Accessible Design", "2010", "ADA 2010");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE =
            "Stairs that are part of a required way out of a building that is open to the public in the USA.";
    private static final Rulebook BOOK = book();

    private Ada2010() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(steps(), nosings(), rails(), grips());
        return Rulebook.of("ADA 2010", EDITION, SCOPE, chapters, List.of());
    }

    /** Uniform in the flight; no difference is named, so none is let through. */
    private static List<Rule> steps() {
        return List.of(
                new RiseAtLeast(IN.read("504.2"), inches(4)),
                new RiseAtMost(IN.read("504.2"), inches(7)),
                new RunAtLeast(IN.read("504.2"), inches(11)),
                new TopRunAtLeast(IN.read("504.2"), inches(11)),
                new RiseSpreadAtMost(IN.read("504.2"), Length.ZERO),
                new TreadSlopeAtMost(IN.read("504.4"), Ratio.of(1, 48)));
    }

    private static List<Rule> nosings() {
        return List.of(
                new ClosedRisers(IN.read("504.3")),
                new NosingRadiusAtMost(IN.read("504.5"), inches(0, 1, 2)),
                new NosingAtMost(IN.read("504.5"), inches(1, 1, 2), List.of()),
                new FloorNosingAtMost(IN.read("504.5"), inches(1, 1, 2), List.of()),
                new RiserRakeAtMost(IN.read("504.5"), Angle.degrees(30)));
    }

    private static List<Rule> rails() {
        return List.of(
                new HandrailSidesAtLeast(IN.read("505.2"), new Count(2)),
                new HandrailHeightAtLeast(IN.read("505.4"), inches(34)),
                new HandrailHeightAtMost(IN.read("505.4"), inches(38)),
                new HandrailClearanceAtLeast(IN.read("505.5"), inches(1, 1, 2)),
                ToLookAt.of(Matter.RAIL_UNDERSIDE, IN.read("505.6"), Limit.atMost(Ratio.of(20, 100))),
                new RailTopExtensionAtLeast(IN.read("505.10.2"), inches(12)),
                new RailBottomExtension(IN.read("505.10.3")));
    }

    private static List<Rule> grips() {
        return List.of(
                new RoundGripAtLeast(IN.read("505.7.1"), inches(1, 1, 4)),
                new RoundGripAtMost(IN.read("505.7.1"), inches(2)),
                new GripPerimeterAtLeast(IN.read("505.7.2"), inches(4)),
                new GripPerimeterAtMost(IN.read("505.7.2"), inches(6, 1, 4)),
                new GripSectionAtMost(IN.read("505.7.2"), inches(2, 1, 4)));
    }
}
