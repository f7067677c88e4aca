package pitchboard.rules.books.america;

import static pitchboard.measure.Length.inches;

import java.util.List;
import java.util.Optional;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.evenness.RunSpreadAtMost;
import pitchboard.rules.kinds.grips.GripPerimeterAtLeast;
import pitchboard.rules.kinds.grips.GripPerimeterAtMost;
import pitchboard.rules.kinds.grips.GripSectionAtMost;
import pitchboard.rules.kinds.grips.RoundGripAtLeast;
import pitchboard.rules.kinds.grips.RoundGripAtMost;
import pitchboard.rules.kinds.guards.EdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.EdgeGuardOpeningLessThan;
import pitchboard.rules.kinds.guards.GuardAsHandrailAtMost;
import pitchboard.rules.kinds.guards.GuardHeightAtLeast;
import pitchboard.rules.kinds.guards.GuardOpeningLessThan;
import pitchboard.rules.kinds.guards.GuardTriangleLessThan;
import pitchboard.rules.kinds.guards.UnguardedDropAtMost;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropAtMost;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.nosings.FloorNosingAtLeast;
import pitchboard.rules.kinds.nosings.FloorNosingAtMost;
import pitchboard.rules.kinds.nosings.NosingAtLeast;
import pitchboard.rules.kinds.nosings.NosingAtMost;
import pitchboard.rules.kinds.nosings.NosingEdgeAtLeast;
import pitchboard.rules.kinds.nosings.NosingRadiusAtMost;
import pitchboard.rules.kinds.nosings.OpenRiserGapLessThan;
import pitchboard.rules.kinds.nosings.RiserRakeAtMost;
import pitchboard.rules.kinds.nosings.Waiver;
import pitchboard.rules.kinds.rails.HandrailClearanceAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.HandrailProjectionAtMost;
import pitchboard.rules.kinds.rails.HandrailSidesAtLeast;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRiseAtMost;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TreadSlopeAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** International Building Code, 2021 edition, chapters 10 and 16: stairs inside one dwelling unit. */
public final class Ibc2021Dwelling {
    private static final Edition EDITION = new Edition("International Building Code", "2021", "IBC 2021");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE =
            "Stairs inside one dwelling unit of a building that the IBC is about, and those that serve one alone.";
    private static final Rulebook BOOK = book();

    private Ibc2021Dwelling() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters =
                List.of(steps(), nosings(), room(), landings(), rails(), grips(), guards(), loads());
        return Rulebook.of("IBC 2021 dwelling", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseAtMost(IN.elsewhere("1011.5.2 Ex.3"), inches(7, 3, 4)),
                new RiseAtLeast(IN.elsewhere("1011.5.2"), inches(4)),
                new RunAtLeast(IN.elsewhere("1011.5.2 Ex.3"), inches(10)),
                new TopRunAtLeast(IN.elsewhere("1011.5.2 Ex.3"), inches(10)),
                new RiseSpreadAtMost(IN.elsewhere("1011.5.4"), inches(0, 3, 8)),
                new RunSpreadAtMost(IN.elsewhere("1011.5.4"), inches(0, 3, 8)),
                ToLookAt.of(Matter.END_RISE_SLOPE, IN.elsewhere("1011.5.4.1"), Limit.atMost(Ratio.of(1, 12))),
                ToLookAt.of(Matter.END_RISE_STRIPE, IN.elsewhere("1011.5.4.1"), Limit.atLeast(inches(1))),
                new TreadSlopeAtMost(IN.elsewhere("1011.7.1"), Ratio.of(1, 48)),
                new FlightRiseAtMost(IN.elsewhere("1011.8"), inches(144)));
    }

    private static List<Rule> nosings() {
        return List.of(
                new NosingAtLeast(IN.elsewhere("1011.5.2 Ex.3"), inches(0, 3, 4), nosingWaiver()),
                new NosingAtMost(IN.elsewhere("1011.5.2 Ex.3"), inches(1, 1, 4), List.of()),
                new FloorNosingAtLeast(IN.elsewhere("1011.5.2 Ex.3"), inches(0, 3, 4), nosingWaiver()),
                new FloorNosingAtMost(IN.elsewhere("1011.5.5"), inches(1, 1, 4), List.of()),
                new NosingEdgeAtLeast(IN.memory("1011.5.5"), inches(0, 1, 16)),
                new NosingRadiusAtMost(IN.memory("1011.5.5"), inches(0, 9, 16)),
                new RiserRakeAtMost(IN.elsewhere("1011.5.5.3"), Angle.degrees(30)),
                new OpenRiserGapLessThan(IN.elsewhere("1011.5.5.3 Ex."), inches(4), List.of()));
    }

    private static List<Proviso> nosingWaiver() {
        return List.of(Waiver.from(IN.elsewhere("1011.5.2 Ex.3"), inches(11)));
    }

    private static List<Rule> room() {
        return List.of(
                new ClearWidthAtLeast(IN.memory("1011.2 Ex.1"), inches(36)),
                new HeadroomAtLeast(IN.elsewhere("1011.3"), inches(80), List.of()));
    }

    /** As long as the flight is wide, and never owed to be longer than 48 in. */
    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(End.BOTTOM, IN.memory("1011.6"), Optional.empty(), enough()),
                new LandingDepthAtLeast(End.TOP, IN.memory("1011.6"), Optional.empty(), enough()));
    }

    private static List<Proviso> enough() {
        return List.of(LandingDepthAtLeast.enough(IN.memory("1011.6"), inches(48)));
    }

    private static List<Rule> rails() {
        return List.of(
                new HandrailSidesAtLeast(IN.elsewhere("1011.11"), new Count(1)),
                new HandrailHeightAtLeast(IN.elsewhere("1014.2"), inches(34)),
                new HandrailHeightAtMost(IN.elsewhere("1014.2"), inches(38)),
                new HandrailClearanceAtLeast(IN.elsewhere("1014.7"), inches(1, 1, 2)),
                new HandrailProjectionAtMost(IN.memory("1014.8"), inches(4, 1, 2)));
    }

    private static List<Rule> guards() {
        return List.of(
                UnguardedDropAtMost.within(IN.memory("1015.2"), inches(36), inches(30)),
                new GuardHeightAtLeast(IN.memory("1015.3 Ex."), inches(34)),
                new GuardAsHandrailAtMost(IN.memory("1015.3 Ex."), inches(38)),
                new GuardOpeningLessThan(IN.memory("1015.4"), inches(4)),
                new GuardTriangleLessThan(IN.memory("1015.4"), inches(6)),
                new UnguardedEdgeDropAtMost(IN.memory("1015.2"), inches(30)),
                new EdgeGuardHeightAtLeast(IN.memory("1015.3 Ex."), inches(36)),
                new EdgeGuardOpeningLessThan(IN.memory("1015.4"), inches(4)));
    }

    private static List<Rule> loads() {
        return List.of(
                ToLookAt.of(Matter.LOAD_ON_FLIGHT, IN.memory("Table 1607.1"), "40 psf all over"),
                ToLookAt.of(Matter.LOAD_ON_TREAD, IN.memory("Table 1607.1 note"), "300 lbf on 2 in by 2 in"),
                ToLookAt.of(Matter.LOAD_ON_RAIL, IN.memory("1607.9.1.1"), "200 lbf anywhere on the top, any way"));
    }

    private static List<Rule> grips() {
        return List.of(
                new RoundGripAtLeast(IN.elsewhere("1014.3"), inches(1, 1, 4)),
                new RoundGripAtMost(IN.elsewhere("1014.3"), inches(2)),
                new GripPerimeterAtLeast(IN.elsewhere("1014.3"), inches(4)),
                new GripPerimeterAtMost(IN.elsewhere("1014.3"), inches(6, 1, 4)),
                new GripSectionAtMost(IN.elsewhere("1014.3"), inches(2, 1, 4)));
    }
}
