package pitchboard.rules.books.america;

import static pitchboard.measure.Length.mm;

import java.util.List;
import pitchboard.measure.Count;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.rules.Limit;
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
import pitchboard.rules.kinds.guards.OutdoorEdgeGuardHeightAtLeast;
import pitchboard.rules.kinds.guards.UnguardedDropAtMost;
import pitchboard.rules.kinds.guards.UnguardedEdgeDropAtMost;
import pitchboard.rules.kinds.landings.End;
import pitchboard.rules.kinds.landings.LandingFallAtMost;
import pitchboard.rules.kinds.landings.Waivers;
import pitchboard.rules.kinds.members.StringerDepthAtLeast;
import pitchboard.rules.kinds.members.StringerSpacingAtMost;
import pitchboard.rules.kinds.members.StringerThicknessAtLeast;
import pitchboard.rules.kinds.members.StringerThroatAtLeast;
import pitchboard.rules.kinds.members.TreadThicknessAtLeast;
import pitchboard.rules.kinds.nosings.NosingAtLeast;
import pitchboard.rules.kinds.nosings.NosingAtMost;
import pitchboard.rules.kinds.nosings.NosingEdgeAtLeast;
import pitchboard.rules.kinds.nosings.NosingEdgeAtMost;
import pitchboard.rules.kinds.rails.HandrailClearanceAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtLeast;
import pitchboard.rules.kinds.rails.HandrailHeightAtMost;
import pitchboard.rules.kinds.rails.HandrailProjectionAtMost;
import pitchboard.rules.kinds.rails.OneRailWidthLessThan;
import pitchboard.rules.kinds.rails.RailBracketSpacingAtMost;
import pitchboard.rules.kinds.rails.UnrailedRisersLessThan;
import pitchboard.rules.kinds.room.ClearWidthAtLeast;
import pitchboard.rules.kinds.room.HeadroomAtLeast;
import pitchboard.rules.kinds.steps.FlightRiseAtMost;
import pitchboard.rules.kinds.steps.RiseAtLeast;
import pitchboard.rules.kinds.steps.RiseAtMost;
import pitchboard.rules.kinds.steps.RunAtLeast;
import pitchboard.rules.kinds.steps.RunAtMost;
import pitchboard.rules.kinds.steps.TopRunAtLeast;
import pitchboard.rules.kinds.steps.TopRunAtMost;
import pitchboard.rules.kinds.steps.TreadSlopeAtMost;
import pitchboard.rules.kinds.surroundings.Matter;
import pitchboard.rules.kinds.surroundings.ToLookAt;
import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** National Building Code of Canada, 2020, section 9.8: what it says about a straight private flight. */
public final class Nbc2020 {
    private static final Edition EDITION =
            new Edition("National Building Code of Canada, section 9.8", "2020", "NBC 2020");
    private static final Citing IN = new Citing(EDITION);
    private static final String SCOPE =
            "Private stairs in Canada: inside one dwelling or serving one; the edition of 2015 has the same numbers.";
    private static final Rulebook BOOK = book();

    private Nbc2020() {}

    public static Rulebook rulebook() {
        return BOOK;
    }

    private static Rulebook book() {
        List<List<Rule>> chapters =
                List.of(steps(), flight(), treads(), room(), rails(), guards(), stringers(), wood());
        return Rulebook.of("NBC 2020 private", EDITION, SCOPE, chapters, List.of());
    }

    private static List<Rule> steps() {
        return List.of(
                new RiseAtLeast(IN.memory("Table 9.8.4.1"), mm(125)),
                new RiseAtMost(IN.memory("Table 9.8.4.1"), mm(200)),
                new RunAtLeast(IN.memory("Table 9.8.4.1"), mm(255)),
                new RunAtMost(IN.memory("Table 9.8.4.1"), mm(355)),
                new TopRunAtLeast(IN.memory("Table 9.8.4.1"), mm(255)),
                new TopRunAtMost(IN.memory("Table 9.8.4.1"), mm(355)),
                new FlightRiseAtMost(IN.memory("9.8.3.3"), mm(3700)));
    }

    /** Neighbours and the whole flight are limited apart. */
    private static List<Rule> flight() {
        return List.of(
                new RiseChangeAtMost(IN.elsewhere("9.8.4.4(1)(a)"), mm(5)),
                new RiseSpreadAtMost(IN.elsewhere("9.8.4.4(1)(b)"), mm(10)),
                new RunChangeAtMost(IN.elsewhere("9.8.4.4(3)"), mm(5)),
                new RunSpreadAtMost(IN.elsewhere("9.8.4.4(3)"), mm(10)),
                ToLookAt.of(Matter.END_RISE_SLOPE, IN.elsewhere("9.8.4.4(2)"), Limit.atMost(Ratio.of(1, 12))),
                new TreadSlopeAtMost(IN.elsewhere("9.8.4.4(5)"), Ratio.of(1, 50)),
                new LandingFallAtMost(End.BOTTOM, IN.elsewhere("9.8.6.1(3)"), Ratio.of(1, 50), onGround()),
                new LandingFallAtMost(End.TOP, IN.elsewhere("9.8.6.1(3)"), Ratio.of(1, 50), onGround()));
    }

    private static List<Proviso> onGround() {
        return List.of(Waivers.groundOnly(IN.elsewhere("9.8.6.1(3)")));
    }

    /** The tread is as deep as the run at least, and deeper by 25 mm at most. */
    private static List<Rule> treads() {
        return List.of(
                new NosingAtLeast(IN.elsewhere("9.8.4.2(2)"), Length.ZERO, List.of()),
                new NosingAtMost(IN.elsewhere("9.8.4.2(2)"), mm(25), List.of()),
                new NosingEdgeAtLeast(IN.memory("9.8.4.8"), mm(6)),
                new NosingEdgeAtMost(IN.memory("9.8.4.8"), mm(14)));
    }

    private static List<Rule> room() {
        return List.of(
                new ClearWidthAtLeast(IN.elsewhere("9.8.2.1"), mm(860)),
                new HeadroomAtLeast(IN.elsewhere("9.8.2.2"), mm(1950), List.of()));
    }

    private static List<Rule> rails() {
        return List.of(
                new UnrailedRisersLessThan(IN.elsewhere("9.8.7.1"), new Count(3), outdoors()),
                new OneRailWidthLessThan(IN.elsewhere("9.8.7.1"), mm(1100)),
                new HandrailHeightAtLeast(IN.elsewhere("9.8.7.4"), mm(865)),
                new HandrailHeightAtMost(IN.elsewhere("9.8.7.4"), mm(1070)),
                new HandrailClearanceAtLeast(IN.elsewhere("9.8.7.5"), mm(50)),
                new HandrailProjectionAtMost(IN.elsewhere("9.8.2.1 / 9.8.7.6"), mm(100)),
                new RailBracketSpacingAtMost(IN.elsewhere("9.8.7.7"), mm(1200)));
    }

    private static List<Proviso> outdoors() {
        return List.of(UnrailedRisersLessThan.outdoors(IN.elsewhere("9.8.7.1"), new Count(4)));
    }

    private static List<Rule> guards() {
        return List.of(
                new UnguardedDropAtMost(IN.elsewhere("9.8.8.1"), mm(600), List.of()),
                ToLookAt.of(Matter.STEEP_GROUND_BESIDE, IN.elsewhere("9.8.8.1"), Limit.atMost(Ratio.of(1, 2))),
                new GuardHeightAtLeast(IN.elsewhere("9.8.8.3"), mm(900)),
                new GuardOpeningLessThan(IN.elsewhere("9.8.8.5"), mm(100)),
                ToLookAt.of(Matter.GUARD_NOT_CLIMBABLE, IN.elsewhere("9.8.8.6"), "140 to 900 mm above the floor"),
                new UnguardedEdgeDropAtMost(IN.elsewhere("9.8.8.1"), mm(600)),
                new EdgeGuardHeightAtLeast(IN.elsewhere("9.8.8.3"), mm(900)),
                new OutdoorEdgeGuardHeightAtLeast(IN.elsewhere("9.8.8.3"), mm(1070), highUp()),
                new EdgeGuardOpeningLessThan(IN.elsewhere("9.8.8.5"), mm(100)));
    }

    private static List<Proviso> highUp() {
        return List.of(OutdoorEdgeGuardHeightAtLeast.moreThan(IN.elsewhere("9.8.8.3"), mm(1800)));
    }

    private static List<Rule> stringers() {
        return List.of(
                new StringerThroatAtLeast(IN.elsewhere("9.8.9.4(1)(a)"), mm(90)),
                new StringerDepthAtLeast(IN.elsewhere("9.8.9.4(1)(a)"), mm(235)),
                new StringerThicknessAtLeast(IN.elsewhere("9.8.9.4(1)(c)"), mm(38), held()),
                new StringerSpacingAtMost(IN.elsewhere("9.8.9.4(1)(d)"), mm(900), withRisers()),
                new TreadThicknessAtLeast(IN.elsewhere("9.8.9.5(1)"), mm(25), open()));
    }

    private static List<Proviso> held() {
        return List.of(StringerThicknessAtLeast.whenHeld(IN.elsewhere("9.8.9.4(1)(c)"), mm(25)));
    }

    private static List<Proviso> withRisers() {
        return List.of(StringerSpacingAtMost.withRisers(IN.elsewhere("9.8.9.4(2)"), mm(1200)));
    }

    private static List<Proviso> open() {
        return TreadThicknessAtLeast.ofOpenTreads(IN.elsewhere("9.8.9.5(1)"), mm(38), mm(750));
    }

    private static List<Rule> wood() {
        return List.of(
                ToLookAt.of(Matter.WOOD_IN_GROUND, IN.memory("9.8.9.3")),
                ToLookAt.of(Matter.LOAD_ON_FLIGHT, IN.elsewhere("9.8.9.1"), "1.9 kPa all over"));
    }
}
