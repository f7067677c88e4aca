package pitchboard.rules.books.america;

import static pitchboard.measure.Length.inches;

import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.measure.Angle;
import pitchboard.measure.Count;
import pitchboard.measure.Ratio;
import pitchboard.rules.Exemption;
import pitchboard.rules.Limit;
import pitchboard.rules.Proviso;
import pitchboard.rules.Rule;
import pitchboard.rules.Rulebook;
import pitchboard.rules.kinds.evenness.RiseSpreadAtMost;
import pitchboard.rules.kinds.evenness.RunSpreadAtMost;
import pitchboard.rules.kinds.grips.FingerRecess;
import pitchboard.rules.kinds.grips.GripPerimeterAtLeast;
import pitchboard.rules.kinds.grips.GripPerimeterAtMost;
import pitchboard.rules.kinds.grips.GripSectionAtMost;
import pitchboard.rules.kinds.grips.RailEdgeRadiusAtLeast;
import pitchboard.rules.kinds.grips.RecessTopWidthAtLeast;
import pitchboard.rules.kinds.grips.RecessTopWidthAtMost;
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
import pitchboard.rules.kinds.landings.DoorLandingDepthAtLeast;
import pitchboard.rules.kinds.landings.DoorLandingFallAtMost;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingDepthAtLeast;
import pitchboard.rules.kinds.landings.LandingFallAtMost;
import pitchboard.rules.kinds.landings.LandingWidthAtLeast;
import pitchboard.rules.kinds.landings.Waivers;
import pitchboard.rules.kinds.nosings.FloorNosingAtLeast;
import pitchboard.rules.kinds.nosings.FloorNosingAtMost;
import pitchboard.rules.kinds.nosings.NosingAtLeast;
import pitchboard.rules.kinds.nosings.NosingAtMost;
import pitchboard.rules.kinds.nosings.NosingBevelAtMost;
import pitchboard.rules.kinds.nosings.NosingRadiusAtMost;
import pitchboard.rules.kinds.nosings.NosingSpreadAtMost;
import pitchboard.rules.kinds.nosings.OpenRiserGapLessThan;
import pitchboard.rules.kinds.nosings.RiserRakeAtMost;
import pitchboard.rules.kinds.nosings.Waiver;
import pitchboard.rules.kinds.rails.HandrailClearanceAtLeast;
import pitchboard.rules.kinds.rails.HandrailFullLength;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.HandrailProjectionAtMost;
import pitchboard.rules.kinds.rails.UnrailedRisersLessThan;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.room.WidthBesideOneRailAtLeast;
import pitchboard.rules.kinds.room.WidthBesideTwoRailsAtLeast;
import pitchboard.rules.kinds.steps.FlightRiseAtMost;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TreadSlopeAtMost;
import pitchboard.rules.kinds.surroundings.EgressDoorDropAtMost;
import pitchboard.rules.kinds.surroundings.LightIndoors;
import pitchboard.rules.kinds.surroundings.LightOutdoors;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.rules.kinds.surroundings.UnswitchedRisersLessThan;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** International Residential Code, 2021 edition, chapter 3: what it says about a straight flight. */
public final class Irc2021 {
    private static final Edition EDITION = new Edition("International Residential Code", "2021", "IRC 2021");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE = "Stairs of one- and two-family houses and townhouses in most of the USA.";
    private static final Rulebook BOOK = book();

    private Irc2021() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters = List.of(
                steps(), nosings(), room(), landings(), rails(), grips(), guards(), surroundings(), wood(), loads());
        return Rulebook.of("IRC 2021", EDITION, SCOPE, chapters, exemptions());
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseAtMost(IN.memory("R311.7.5.1"), inches(7, 3, 4)),
                new RiseSpreadAtMost(IN.read("R311.7.5.1"), inches(0, 3, 8)),
                new FlightRiseAtMost(IN.memory("R311.7.3"), inches(151)),
                new RunAtLeast(IN.memory("R311.7.5.2"), inches(10)),
                new TopRunAtLeast(IN.memory("R311.7.5.2"), inches(10)),
                new RunSpreadAtMost(IN.memory("R311.7.5.2"), inches(0, 3, 8)),
                new TreadSlopeAtMost(IN.memory("R311.7.7"), Ratio.of(1, 48)),
                new RiserRakeAtMost(IN.memory("R311.7.5.1"), Angle.degrees(30)),
                new OpenRiserGapLessThan(IN.memory("R311.7.5.1"), inches(4), openRisers()));
    }

    /** Since 2018 by the height of each opening, not by the rise of the whole stair. */
    private static List<Proviso> openRisers() {
        return List.of(OpenRiserGapLessThan.above(IN.memory("R311.7.5.1"), inches(30)));
    }

    private static List<Rule> nosings() {
        return List.of(
                new NosingAtLeast(IN.memory("R311.7.5.3"), inches(0, 3, 4), nosingWaiver()),
                new NosingAtMost(IN.memory("R311.7.5.3"), inches(1, 1, 4), nosingWaiver()),
                new FloorNosingAtLeast(IN.memory("R311.7.5.3"), inches(0, 3, 4), nosingWaiver()),
                new FloorNosingAtMost(IN.memory("R311.7.5.3"), inches(1, 1, 4), nosingWaiver()),
                new NosingSpreadAtMost(IN.memory("R311.7.5.3"), inches(0, 3, 8)),
                new NosingRadiusAtMost(IN.memory("R311.7.5.3"), inches(0, 9, 16)),
                new NosingBevelAtMost(IN.memory("R311.7.5.3"), inches(0, 1, 2)));
    }

    private static List<Proviso> nosingWaiver() {
        return List.of(Waiver.from(IN.read("R311.7.5.3 Ex."), inches(11)));
    }

    private static List<Rule> room() {
        return List.of(
                new ClearWidthAtLeast(IN.memory("R311.7.1"), inches(36)),
                new WidthBesideOneRailAtLeast(IN.memory("R311.7.1"), inches(31, 1, 2)),
                new WidthBesideTwoRailsAtLeast(IN.memory("R311.7.1"), inches(27)),
                new HeadroomAtLeast(IN.memory("R311.7.2"), inches(80), List.of()),
                ToLookAt.of(Matter.FLOOR_EDGE_OVER_SIDES, IN.memory("R311.7.2 Ex.1"), Limit.atMost(inches(4, 3, 4))),
                ToLookAt.of(Matter.HARD_FINISH, IN.memory("R311.7.5")));
    }

    private static List<Rule> landings() {
        return List.of(
                new LandingDepthAtLeast(End.BOTTOM, IN.memory("R311.7.6"), Optional.of(inches(36)), List.of()),
                new LandingDepthAtLeast(End.TOP, IN.memory("R311.7.6"), Optional.of(inches(36)), topLanding()),
                new LandingWidthAtLeast(End.BOTTOM, IN.memory("R311.7.6"), List.of()),
                new LandingWidthAtLeast(End.TOP, IN.memory("R311.7.6"), topLanding()),
                new LandingFallAtMost(End.BOTTOM, IN.memory("R311.7.7"), Ratio.of(1, 48), List.of()),
                new LandingFallAtMost(End.TOP, IN.memory("R311.7.7"), Ratio.of(1, 48), topLanding()),
                new DoorLandingDepthAtLeast(IN.memory("R311.3"), inches(36)),
                new DoorLandingFallAtMost(IN.memory("R311.3"), Ratio.of(2, 100)),
                new EgressDoorDropAtMost(IN.memory("R311.3.1"), Limit.atMost(inches(1, 1, 2)), inches(7, 3, 4)),
                ToLookAt.of(Matter.OTHER_DOOR_DROP, IN.memory("R311.3.2"), Limit.atMost(inches(7, 3, 4))));
    }

    private static List<Proviso> topLanding() {
        return List.of(
                Waivers.topIndoors(IN.memory("R311.7.6 Ex.")),
                Waivers.topOutdoors(IN.memory("R311.3.2 Ex."), new Count(2)));
    }

    private static List<Rule> rails() {
        return List.of(
                new UnrailedRisersLessThan(IN.memory("R311.7.8"), new Count(4)),
                new HandrailHeightAtLeast(IN.memory("R311.7.8.1"), inches(34)),
                new HandrailHeightAtMost(IN.memory("R311.7.8.1"), inches(38)),
                new HandrailProjectionAtMost(IN.memory("R311.7.8.2"), inches(4, 1, 2)),
                new HandrailClearanceAtLeast(IN.memory("R311.7.8.3"), inches(1, 1, 2)),
                new HandrailFullLength(IN.memory("R311.7.8.4"), interruption()));
    }

    private static List<Proviso> interruption() {
        String what = "a newel at a turn, or a newel, volute, turnout or easing over the lowest tread,";
        return List.of(HandrailFullLength.interruptedBy(IN.memory("R311.7.8.4 Ex."), what));
    }

    private static List<Rule> grips() {
        return List.of(
                new RoundGripAtLeast(IN.memory("R311.7.8.5"), inches(1, 1, 4)),
                new RoundGripAtMost(IN.memory("R311.7.8.5"), inches(2)),
                new GripPerimeterAtLeast(IN.memory("R311.7.8.5"), inches(4)),
                new GripPerimeterAtMost(IN.memory("R311.7.8.5"), inches(6, 1, 4)),
                new GripSectionAtMost(IN.memory("R311.7.8.5"), inches(2, 1, 4)),
                new FingerRecess(FingerRecess.Part.START, IN.memory("R311.7.8.5"), inches(0, 3, 4), thickRail()),
                new FingerRecess(FingerRecess.Part.DEPTH, IN.memory("R311.7.8.5"), inches(0, 5, 16), thickRail()),
                new FingerRecess(FingerRecess.Part.HEIGHT, IN.memory("R311.7.8.5"), inches(0, 3, 8), thickRail()),
                new RecessTopWidthAtLeast(IN.memory("R311.7.8.5"), inches(1, 1, 4), thickRail()),
                new RecessTopWidthAtMost(IN.memory("R311.7.8.5"), inches(2, 3, 4), thickRail()),
                new RailEdgeRadiusAtLeast(IN.memory("R311.7.8.5"), inches(0, 1, 100)));
    }

    private static List<Proviso> thickRail() {
        return List.of(FingerRecess.beyond(IN.memory("R311.7.8.5"), inches(6, 1, 4)));
    }

    private static List<Rule> guards() {
        return List.of(
                UnguardedDropAtMost.within(IN.memory("R312.1.1"), inches(36), inches(30)),
                new GuardHeightAtLeast(IN.memory("R312.1.2 Ex.1"), inches(34)),
                new GuardAsHandrailAtMost(IN.memory("R312.1.2 Ex.2"), inches(38)),
                new GuardOpeningLessThan(IN.memory("R312.1.3 Ex.2"), inches(4, 3, 8)),
                new GuardTriangleLessThan(IN.memory("R312.1.3 Ex.1"), inches(6)),
                new UnguardedEdgeDropAtMost(IN.memory("R312.1.1"), inches(30)),
                new EdgeGuardHeightAtLeast(IN.memory("R312.1.2"), inches(36)),
                new EdgeGuardOpeningLessThan(IN.memory("R312.1.3"), inches(4)));
    }

    private static List<Rule> surroundings() {
        return List.of(
                new LightIndoors(IN.memory("R303.7"), "1 footcandle (11 lux)"),
                new UnswitchedRisersLessThan(IN.memory("R303.7"), new Count(6)),
                new LightOutdoors(
                        IN.memory("R303.8"),
                        "at the top landing; at the bottom one, where the stair leads down to a basement"),
                ToLookAt.of(Matter.GYPSUM_BELOW, IN.memory("R302.7"), Limit.atLeast(inches(0, 1, 2))));
    }

    private static List<Rule> wood() {
        return List.of(
                ToLookAt.of(Matter.OUTDOOR_FIXING, IN.memory("R311.5.1")),
                ToLookAt.of(Matter.CLEARANCE_TO_SOIL, IN.memory("R317.1"), Limit.atLeast(inches(8))),
                ToLookAt.of(Matter.WOOD_IN_GROUND, IN.memory("R317.1.2")),
                ToLookAt.of(Matter.FASTENERS, IN.memory("R317.3")),
                ToLookAt.of(Matter.FOOTING_DEPTH, IN.memory("R403.1.4 / R507.3"), Limit.atLeast(inches(12))));
    }

    private static List<Rule> loads() {
        return List.of(
                ToLookAt.of(Matter.LOAD_ON_FLIGHT, IN.memory("Table R301.5"), "40 psf all over"),
                ToLookAt.of(Matter.LOAD_ON_TREAD, IN.elsewhere("Table R301.5 note c"), "300 lbf on 2 in by 2 in"),
                ToLookAt.of(
                        Matter.LOAD_ON_RAIL, IN.memory("Table R301.5 note d"), "200 lbf anywhere on the top, any way"),
                ToLookAt.of(
                        Matter.LOAD_ALONG_GUARD,
                        IN.elsewhere("Table R301.5 note d"),
                        "none along its top, unless it is the handrail"),
                ToLookAt.of(Matter.LOAD_ON_INFILL, IN.elsewhere("Table R301.5 note f"), "50 lbf level, on 1 sq ft"));
    }

    /** New in this edition, and only from the stair clause: guards, light and wood are asked for all the same. */
    private static List<Exemption> exemptions() {
        return List.of(
                new Exemption(
                        Brief.Use.FREE_STANDING,
                        List.of(IN.memory("R311.7 Ex.1")),
                        "R311.7",
                        "a stair that stands apart from any building, porch or deck"),
                new Exemption(
                        Brief.Use.STORAGE_OR_CRAWL_SPACE,
                        List.of(IN.memory("R311.7 Ex.2"), IN.memory("R311.7 Ex.3")),
                        "R311.7",
                        "a stair to an attic nobody lives in, or to a crawl space,"));
    }
}
